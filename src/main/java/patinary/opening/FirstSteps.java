package patinary.opening;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** What has been done of the first steps in a new shop, so that a page can say what comes next. */
@Service
public class FirstSteps {

    /**
     * What there is at least one of.
     *
     * @param opening whether what was there on the first day is recorded
     * @param moneyPlace a cash box, bank or card
     */
    public record Flags(
            boolean opening,
            boolean moneyPlace,
            boolean source,
            boolean supply,
            boolean channel,
            boolean receipt,
            boolean piece,
            boolean benchEntry,
            boolean offer,
            boolean sale) {

        /** Whether nothing at all has been recorded yet. */
        public boolean nothingYet() {
            return !(opening || source || supply || channel || receipt || piece || benchEntry || offer || sale);
        }
    }

    private final JdbcClient jdbc;

    FirstSteps(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public Flags look() {
        return jdbc.sql("""
                        select exists (select 1 from opening) as opening,
                               exists (select 1 from money_place) as money_place,
                               exists (select 1 from source) as source,
                               exists (select 1 from supply) as supply,
                               exists (select 1 from channel) as channel,
                               exists (select 1 from receipt) as receipt,
                               exists (select 1 from piece) as piece,
                               exists (select 1 from bench_entry) as bench_entry,
                               exists (select 1 from offer) as offer,
                               exists (select 1 from sale) as sale""").query(Flags.class).single();
    }
}
