package patinary.shop;

import java.io.Serializable;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Codes with which a person gives herself a new password: the first one of a helper, or one after the old is lost. A code is told
 * once, drawn at random, good for a quarter of an hour, for one use and for few wrong tries, and kept as a slow salted hash
 * (OWASP ASVS 5.0, 6.4.1 and 6.5.1 to 6.5.5).
 */
@Service
public class WaysIn {

    private static final Duration LIFE = Duration.ofMinutes(15);
    private static final int HALF = 6;
    private static final int TRIES = 10;

    /** For a person with no code, so that her name takes as long to refuse as any other. */
    private record Code(UUID personId, String codeHash, Instant endsAt, int wrong) {}

    private final People people;
    private final PasswordEncoder passwords;
    private final Devices devices;
    private final Passkeys keys;
    private final JdbcClient jdbc;
    private final Clock clock;
    private final String nobodys;

    WaysIn(People people, PasswordEncoder passwords, Devices devices, Passkeys keys, JdbcClient jdbc, Clock clock) {
        this.people = people;
        this.passwords = passwords;
        this.devices = devices;
        this.keys = keys;
        this.jdbc = jdbc;
        this.clock = clock;
        this.nobodys = Objects.requireNonNull(passwords.encode(Secrets.signs(2 * HALF)));
    }

    /**
     * Makes a code for somebody by name.
     *
     * @param name who; empty is the owner
     * @return who it is for and the code, or nothing where there is no such person
     */
    @Transactional
    public Optional<Given> give(String name) {
        Optional<Person> person = name.isEmpty() ? people.findFirstByRole(Role.OWNER) : people.findByName(name);
        return person.map(one -> new Given(one.name, make(one.id)));
    }

    /**
     * A code just made.
     *
     * @param name whom it is for
     * @param code told this once
     */
    public record Given(String name, String code) implements Serializable {}

    /** Makes a code for a person; one that was made before is worth nothing from now on. */
    String make(UUID person) {
        String code = Secrets.signs(2 * HALF);
        jdbc.sql("delete from way_in where person_id = ?").param(person).update();
        jdbc.sql("insert into way_in (person_id, code_hash, ends_at, wrong) values (?, ?, ?, 0)")
                .params(
                        person,
                        Objects.requireNonNull(passwords.encode(code)),
                        clock.instant().plus(LIFE).atOffset(ZoneOffset.UTC))
                .update();
        return code.substring(0, HALF) + "-" + code.substring(HALF);
    }

    /**
     * Gives a person the password she chose, ends every stay under her name, and takes her passkeys away: a lost device must not let
     * anybody in that a lost password does not.
     *
     * @return whether the code was hers and still good
     */
    @Transactional
    public boolean use(String name, String typed, String password) {
        Optional<Person> person = people.findByName(name);
        Optional<Code> code = person.flatMap(one -> find(one.id)).filter(this::isGood);
        boolean right = passwords.matches(plain(typed), code.map(Code::codeHash).orElse(nobodys));
        if (code.isEmpty() || person.isEmpty()) {
            return false;
        }
        if (!right) {
            jdbc.sql("update way_in set wrong = wrong + 1 where person_id = ?")
                    .param(code.get().personId())
                    .update();
            return false;
        }
        // Of two that use it at once, one takes the row away.
        int taken = jdbc.sql("delete from way_in where person_id = ? and code_hash = ?")
                .params(code.get().personId(), code.get().codeHash())
                .update();
        if (taken == 0) {
            return false;
        }
        person.get().passwordHash = Objects.requireNonNull(passwords.encode(password));
        people.save(person.get());
        devices.endAll(name);
        keys.removeAll(person.get().id);
        return true;
    }

    private Optional<Code> find(UUID person) {
        return jdbc.sql("select person_id, code_hash, ends_at, wrong from way_in where person_id = ?")
                .param(person)
                .query(Code.class)
                .optional();
    }

    private boolean isGood(Code code) {
        return code.wrong < TRIES && clock.instant().isBefore(code.endsAt);
    }

    private static String plain(String typed) {
        return typed.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
    }
}
