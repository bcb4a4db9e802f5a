package patinary.durable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.testing.ShopTest;

/** Many rows come in as they were given, and no key or index of their table is lost over it, whether they come in or not. */
@ShopTest
class ManyRowsIT {

    private static final int ROWS = ManyRows.MANY * 2 + 7;
    private static final String NOTE =
            "An invented note: tab\t, line\nand\r\n back\\slash \\N \\. é 🧵 \"quoted\", 'too'; %d";
    private static final OffsetDateTime MOMENT = OffsetDateTime.of(2026, 5, 4, 10, 0, 0, 0, ZoneOffset.UTC);

    @Autowired
    private ManyRows many;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private DataSource store;

    @AfterEach
    void takeAway() {
        jdbc.update("delete from strand_move");
        jdbc.update("delete from document");
    }

    @Test
    void everyRowIsThereAsItWasGiven() throws SQLException {
        List<String> keys = keys();

        transaction.executeWithoutResult(status -> fill(ROWS, true));

        assertThat(jdbc.queryForList("select note from document order by kind_rank", String.class))
                .hasSize(ROWS)
                .startsWith(NOTE.formatted(0), NOTE.formatted(1))
                .endsWith(NOTE.formatted(ROWS - 1));
        assertThat(jdbc.queryForList("select distinct recorded_at from document", OffsetDateTime.class))
                .singleElement()
                .satisfies(moment -> assertThat(moment.toInstant()).isEqualTo(MOMENT.toInstant()));
        assertThat(jdbc.queryForList("select move from strand_move order by move_no", String.class))
                .hasSize(ROWS)
                .startsWith("");
        assertThat(keys()).isEqualTo(keys);
    }

    @Test
    void oneMoreTimeIntoWhatIsThereAlready() {
        transaction.executeWithoutResult(status -> fill(ROWS, true));
        transaction.executeWithoutResult(status -> fill(ROWS, true));

        assertThat(jdbc.queryForObject("select count(*) from strand_move", Integer.class))
                .isEqualTo(2 * ROWS);
    }

    @Test
    void whatNamesNothingIsRefusedAndTheKeysAreStillThere() throws SQLException {
        List<String> keys = keys();

        assertThatThrownBy(() -> transaction.executeWithoutResult(status -> fill(ROWS, false)))
                .isInstanceOf(DataIntegrityViolationException.class);

        assertThat(jdbc.queryForObject("select count(*) from document", Integer.class))
                .isZero();
        assertThat(keys()).isEqualTo(keys);
    }

    /** Documents, each named by the move of a strand; the last move names none where it is not to be right. */
    private void fill(int rows, boolean right) {
        ManyRows.Filling documents =
                many.into("document", List.of("id", "kind", "kind_rank", "doc_date", "note", "recorded_at", "version"));
        ManyRows.Filling moves = many.into(
                "strand_move", List.of("strand_id", "document_id", "move_no", "doc_date", "kind_rank", "move"));
        LocalDate day = LocalDate.of(2026, 5, 4);
        for (int i = 0; i < rows; i++) {
            UUID id = UUID.randomUUID();
            documents.add(id, "EXPENSE", i, day, NOTE.formatted(i), MOMENT, 0);
            boolean named = right || i < rows - 1;
            moves.add(UUID.randomUUID(), named ? id : UUID.randomUUID(), i, day, i, i == 0 ? "" : "move " + i);
        }
        documents.end();
        moves.end();
    }

    /** What the database says of the keys and indexes of the table. */
    private List<String> keys() throws SQLException {
        return Engine.of(store) == Engine.POSTGRESQL
                ? jdbc.queryForList("""
                        select pg_get_constraintdef(oid) from pg_constraint where conrelid = cast('strand_move' as regclass)
                        union all
                        select indexdef from pg_indexes where tablename = 'strand_move' order by 1""", String.class)
                : jdbc.queryForList("""
                        select index_name from information_schema.indexes where lower(table_name) = 'strand_move'
                        order by 1""", String.class);
    }
}
