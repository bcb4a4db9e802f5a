package patinary.durable;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyIn;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/**
 * Writes many rows of a table in the transaction at hand. A few go as statements in a batch, on both databases. Many go to PostgreSQL as
 * one stream (COPY); and where they are the first of their table, its foreign keys and indexes are made once behind them, which takes a
 * fraction of what it costs to look at them for each row ({@link KeysAside}).
 */
@Component
public class ManyRows {

    /** So many rows are held in memory, and are what counts as many. */
    static final int MANY = 5_000;

    /** For fewer rows a stream's beginning and end cost more than it spares. */
    private static final int WORTH_A_STREAM = 500;

    private final JdbcTemplate jdbc;

    ManyRows(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Begins to write rows; nothing is sure to be written before {@link Filling#end}. */
    public Filling into(String table, List<String> columns) {
        return new Filling(table, columns);
    }

    /** Rows on their way into a table. Where one fails, the whole transaction must: keys may be set aside until the end. */
    public final class Filling {

        private final String table;
        private final List<String> columns;
        private final List<@Nullable Object[]> rows = new ArrayList<>();
        private List<String> aside = List.of();
        private boolean begun;

        private Filling(String table, List<String> columns) {
            this.table = table;
            this.columns = columns;
        }

        /** Takes the values of a row in the order of the columns: what JDBC takes as objects. */
        public void add(@Nullable Object... row) {
            rows.add(row);
            if (rows.size() == MANY) {
                if (!begun) {
                    aside = KeysAside.ofEmpty(jdbc, table);
                }
                write();
            }
        }

        /** Writes what is left. */
        public void end() {
            write();
            aside.forEach(jdbc::execute);
            aside = List.of();
        }

        /** Writes all that was added until now; rows of other tables may name it then. */
        public void write() {
            begun = true;
            if (rows.size() < WORTH_A_STREAM || !streamed()) {
                batched();
            }
            rows.clear();
        }

        private boolean streamed() {
            return Boolean.TRUE.equals(jdbc.execute((ConnectionCallback<Boolean>) connection -> {
                if (!connection.isWrapperFor(PGConnection.class)) {
                    return false;
                }
                CopyIn copy = connection
                        .unwrap(PGConnection.class)
                        .getCopyAPI()
                        .copyIn("copy " + table + " (" + String.join(", ", columns) + ") from stdin");
                try {
                    byte[] text = CopyText.of(rows).getBytes(StandardCharsets.UTF_8);
                    copy.writeToCopy(text, 0, text.length);
                    copy.endCopy();
                } finally {
                    if (copy.isActive()) {
                        copy.cancelCopy();
                    }
                }
                return true;
            }));
        }

        private void batched() {
            if (rows.isEmpty()) {
                return;
            }
            String marks = String.join(", ", Collections.nCopies(columns.size(), "?"));
            jdbc.batchUpdate(
                    "insert into " + table + " (" + String.join(", ", columns) + ") values (" + marks + ")",
                    rows,
                    WORTH_A_STREAM,
                    (statement, row) -> {
                        for (int i = 0; i < row.length; i++) {
                            statement.setObject(i + 1, row[i]);
                        }
                    });
        }
    }
}
