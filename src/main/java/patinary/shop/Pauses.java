package patinary.shop;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Slows guessing down: after a few failures each further one doubles a pause, for the account and for the address it
 * came from. The account's pause stays short, so that nobody can lock the owner out by guessing; the address's grows (OWASP
 * ASVS 5.0, 6.1.1 and 6.3.1). Kept in the database, so that several copies of the program count together. A try is counted
 * as a failure before the password is looked at, and taken back when it was right: many tries at once get no further than
 * one after the other.
 */
@Component
class Pauses {

    private static final int MOST_KEPT = 10_000;
    private static final Duration ACCOUNT_LIMIT = Duration.ofSeconds(15);
    private static final Duration ADDRESS_LIMIT = Duration.ofMinutes(15);

    private final JdbcClient jdbc;
    private final Clock clock;

    Pauses(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * Whether somebody may try now. If so the try counts, until {@link #succeeded} takes it back.
     *
     * @param name who she says she is
     * @param address where she comes from
     */
    boolean mayTry(String name, String address) {
        return !isPause(account(name))
                && !isPause(address(address))
                && count(account(name), ACCOUNT_LIMIT)
                && count(address(address), ADDRESS_LIMIT);
    }

    /** The password was right: what failed before under this name and from this address is forgotten. */
    void succeeded(String name, String address) {
        jdbc.sql("delete from sign_in_try where what in (?, ?)")
                .params(account(name), address(address))
                .update();
    }

    private boolean isPause(String what) {
        return find(what).filter(tries -> tries.isPause(clock.instant())).isPresent();
    }

    /** Whether the try was counted. Of several at once each counts, and those that come into a pause are refused. */
    private boolean count(String what, Duration longest) {
        while (true) {
            Instant moment = clock.instant();
            Optional<Tries> before = find(what);
            if (before.filter(tries -> tries.isPause(moment)).isPresent()) {
                return false;
            }
            boolean counted = before.isEmpty()
                    ? insert(what, Tries.first(moment))
                    : replace(what, before.get(), before.get().oneMore(moment, longest));
            if (counted) {
                return true;
            }
        }
    }

    private Optional<Tries> find(String what) {
        return jdbc.sql("select failures, last_at as last, until_at as until from sign_in_try where what = ?")
                .param(what)
                .query(Tries.class)
                .optional();
    }

    private boolean insert(String what, Tries tries) {
        makeRoom(tries.last());
        try {
            return jdbc.sql("insert into sign_in_try (what, failures, last_at, until_at) values (?, ?, ?, ?)")
                            .params(
                                    what,
                                    tries.failures(),
                                    tries.last().atOffset(ZoneOffset.UTC),
                                    tries.until().atOffset(ZoneOffset.UTC))
                            .update()
                    == 1;
        } catch (DuplicateKeyException anotherWasFirst) {
            return false;
        }
    }

    private boolean replace(String what, Tries before, Tries after) {
        return jdbc.sql("update sign_in_try set failures = ?, last_at = ?, until_at = ?"
                                + " where what = ? and failures = ? and last_at = ?")
                        .params(
                                after.failures(),
                                after.last().atOffset(ZoneOffset.UTC),
                                after.until().atOffset(ZoneOffset.UTC),
                                what,
                                before.failures(),
                                before.last().atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    /** What is forgotten goes; beyond a number of rows the oldest too, so that guessing does not fill the disk. */
    private void makeRoom(Instant moment) {
        jdbc.sql("delete from sign_in_try where last_at < ?")
                .param(moment.minus(Tries.FORGET).atOffset(ZoneOffset.UTC))
                .update();
        if (jdbc.sql("select count(*) from sign_in_try").query(Long.class).single() >= MOST_KEPT) {
            jdbc.sql("delete from sign_in_try where what ="
                            + " (select what from sign_in_try order by last_at, what fetch first 1 rows only)")
                    .update();
        }
    }

    private static String account(String name) {
        return "account " + name;
    }

    private static String address(String address) {
        return "address " + address;
    }
}
