package patinary.figures;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import patinary.durable.Engine;
import patinary.testing.ShopTest;

/**
 * That kept figures are worked out from what was touched, and not from all postings of an account: while a shop is taken in, H2 knows
 * nothing yet of how its tables are filled, and once held each of them against every touched sale, for a quarter of an hour.
 * PostgreSQL is told how large they have become.
 */
@ShopTest
class FiguresPlanIT {

    private static final String UNKNOWN = "alter table posting alter column %s selectivity 50";

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private DataSource store;

    @Autowired
    private PlannerStatistics statistics;

    @Test
    void noneBeginsWithAnAccount() throws SQLException {
        if (Engine.of(store) == Engine.POSTGRESQL) {
            assertThat(statistics.areCollected()).isTrue();
            return;
        }
        List.of("account", "piece_id", "document_id", "supply_id", "origin_id", "doc_date")
                .forEach(column -> jdbc.sql(UNKNOWN.formatted(column)).update());
        HikariDataSource pool = store.unwrap(HikariDataSource.class);
        // A session of H2 plans a view once for several seconds: one of the pool may still have the plan of a test
        // before this one.
        try (Connection own = DriverManager.getConnection(pool.getJdbcUrl(), pool.getUsername(), pool.getPassword())) {
            JdbcClient asked = JdbcClient.create(new SingleConnectionDataSource(own, true));
            assertThat(KeptFigure.values())
                    .allSatisfy(figure ->
                            assertThat(plan(asked, figure)).contains("touched_").doesNotContain("posting_account_ix"));
        }
    }

    private static String plan(JdbcClient asked, KeptFigure figure) {
        String rows = String.join(
                "\n",
                asked.sql("explain select * from " + figure.definition())
                        .query(String.class)
                        .list());
        return rows.toLowerCase(Locale.ROOT);
    }
}
