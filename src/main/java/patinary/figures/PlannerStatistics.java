package patinary.figures;

import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import patinary.durable.Engine;

/**
 * Tells PostgreSQL how large tables have become, inside the transaction that filled them: its own collector sees only what is committed,
 * and a plan made for empty tables did not come to its end over those of a large shop. The embedded database keeps count by itself.
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
        collect("");
    }

    void of(String table) {
        collect(" " + table);
    }

    private void collect(String what) {
        if (collected) {
            jdbc.execute("analyze" + what);
        }
    }
}
