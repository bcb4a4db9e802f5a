package patinary.figures;

import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import patinary.durable.Engine;

/**
 * Tells PostgreSQL how large tables have become, inside the transaction that filled them: its own collector sees only what is committed,
 * and a plan made for empty tables did not come to its end over those of a large shop. And how few rows are asked for after a change. The
 * embedded database keeps count by itself.
 */
@Component
class PlannerStatistics {

    private final JdbcTemplate jdbc;
    private final boolean collected;

    PlannerStatistics(JdbcTemplate jdbc, DataSource store) throws SQLException {
        this.jdbc = jdbc;
        this.collected = Engine.of(store) == Engine.POSTGRESQL;
    }

    /** Whether the database is a server that collects them at all. */
    boolean areCollected() {
        return collected;
    }

    void ofAll() {
        tell("analyze");
    }

    void of(String table) {
        tell("analyze " + table);
    }

    /**
     * What follows is asked about few ids. The planner takes how many there are from the size of their table, which holds those of
     * earlier changes too until it is swept, and would then read all postings once and look the few pieces up among them. The
     * definitions find their rows by indexes, as the embedded database always does.
     */
    void fewAreAsked() {
        tell("set local enable_hashjoin = off; set local enable_mergejoin = off; set local jit = off");
    }

    /** Takes {@link #fewAreAsked} back. */
    void asUsual() {
        tell("set local enable_hashjoin = default; set local enable_mergejoin = default; set local jit = default");
    }

    private void tell(String what) {
        if (collected) {
            jdbc.execute(what);
        }
    }
}
