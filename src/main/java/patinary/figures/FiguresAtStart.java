package patinary.figures;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.context.annotation.Lazy;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Books;

/**
 * Makes all kept figures anew before the program answers anything, where they were not made by the definitions that are in the
 * database now: after an update that brought or changed one. Not lazy: a command beside the server needs them too.
 */
@Component
@Lazy(false)
class FiguresAtStart implements SmartInitializingSingleton {

    /** Every script of a view runs again when one of them changed, so the check sum of any tells of all. */
    private static final String VIEWS = """
            select "checksum" from "flyway_schema_history"
            where "script" = 'R__35_piece_figures.sql' and "success"
            order by "installed_rank" desc
            fetch first 1 row only""";

    private static final Logger LOG = LoggerFactory.getLogger(FiguresAtStart.class);

    private final Figures figures;
    private final Books books;
    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;

    FiguresAtStart(Figures figures, Books books, JdbcTemplate jdbc, TransactionTemplate transaction) {
        this.figures = figures;
        this.books = books;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (areCurrent()) {
            return;
        }
        transaction.executeWithoutResult(status -> {
            books.hold();
            // Another copy of the program may have done it while this one waited.
            if (!areCurrent()) {
                LOG.info("All kept figures are made anew; with many pieces this takes a while");
                figures.booksRebuilt();
                jdbc.update("delete from figures_made");
                jdbc.update("insert into figures_made (id, views) values (1, ?)", views());
            }
        });
    }

    private boolean areCurrent() {
        return Objects.equals(one("select views from figures_made"), views());
    }

    private @Nullable Integer views() {
        return Objects.requireNonNull(one(VIEWS), "No views in the history of the migrations");
    }

    private @Nullable Integer one(String query) {
        List<Integer> found = jdbc.queryForList(query, Integer.class);
        return found.isEmpty() ? null : found.get(0);
    }
}
