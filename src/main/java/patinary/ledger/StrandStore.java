package patinary.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import patinary.durable.ManyRows;

/** The stored moves of strands: the one place that writes them. */
@Repository
class StrandStore {

    private static final String SOME = "select * from strand_move where %s in (%s)";

    private static final List<String> COLUMNS =
            List.of("strand_id", "document_id", "move_no", "doc_date", "kind_rank", "move");

    private final JdbcTemplate jdbc;
    private final ManyRows many;

    StrandStore(JdbcTemplate jdbc, ManyRows many) {
        this.jdbc = jdbc;
        this.many = many;
    }

    /** Whether the books were derived since strands are kept. */
    boolean isKept() {
        return Boolean.TRUE.equals(jdbc.queryForObject("select strands_kept from books where id = 1", Boolean.class));
    }

    List<StrandMove> all() {
        return jdbc.query("select * from strand_move", (row, number) -> read(row));
    }

    List<StrandMove> ofDocuments(Collection<UUID> documents) {
        return some("document_id", documents);
    }

    /** The moves of a strand on a day and later. */
    List<StrandMove> from(UUID strand, LocalDate day) {
        return jdbc.query(
                "select * from strand_move where strand_id = ? and doc_date >= ?",
                (row, number) -> read(row),
                strand,
                day);
    }

    List<StrandMove> ofStrands(Collection<UUID> strands) {
        return some("strand_id", strands);
    }

    private List<StrandMove> some(String column, Collection<UUID> wanted) {
        return Batches.asked(
                wanted,
                ids -> jdbc.query(
                        SOME.formatted(column, Batches.marks(ids)), (row, number) -> read(row), ids.toArray()));
    }

    void replace(Collection<UUID> documents, Collection<StrandMove> moves) {
        jdbc.batchUpdate(
                "delete from strand_move where document_id = ?",
                documents.stream().map(id -> new Object[] {id}).toList());
        insert(moves.stream().map(StrandRow::of).toList());
    }

    /** Makes the stored moves these; a row that is there as it must be is left alone. */
    void replaceAll(Collection<StrandMove> moves) {
        Set<StrandRow> stored = new HashSet<>(jdbc.query("select * from strand_move", (row, number) -> row(row)));
        List<StrandRow> fresh = moves.stream()
                .map(StrandRow::of)
                .filter(row -> !stored.remove(row))
                .toList();
        jdbc.batchUpdate(
                "delete from strand_move where strand_id = ? and document_id = ? and move_no = ?",
                stored.stream()
                        .map(row -> new Object[] {row.strand(), row.document().id(), row.number()})
                        .toList());
        insert(fresh);
        jdbc.update("update books set strands_kept = true where id = 1");
    }

    private void insert(Collection<StrandRow> moves) {
        ManyRows.Filling rows = many.into("strand_move", COLUMNS);
        moves.forEach(move -> rows.add(
                move.strand(),
                move.document().id(),
                move.number(),
                move.document().date(),
                move.document().kind().ordinal(),
                move.move()));
        rows.end();
    }

    private static StrandMove read(ResultSet row) throws SQLException {
        StrandRow stored = row(row);
        return new StrandMove(stored.strand(), stored.document(), stored.number(), MoveText.read(stored.move()));
    }

    private static StrandRow row(ResultSet row) throws SQLException {
        return new StrandRow(
                row.getObject("strand_id", UUID.class),
                PostingStore.reference(row),
                row.getInt("move_no"),
                row.getString("move"));
    }
}
