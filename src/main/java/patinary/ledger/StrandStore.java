package patinary.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The stored moves of strands: the one place that writes them. */
@Repository
class StrandStore {

    private static final String SOME = "select * from strand_move where %s in (%s)";

    private static final String INSERT = """
            insert into strand_move (strand_id, document_id, move_no, doc_date, kind_rank, move) values (?, ?, ?, ?, ?, ?)""";

    private final JdbcTemplate jdbc;

    StrandStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
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
        insert(moves);
    }

    void replaceAll(Collection<StrandMove> moves) {
        jdbc.update("delete from strand_move");
        insert(moves);
        jdbc.update("update books set strands_kept = true where id = 1");
    }

    private void insert(Collection<StrandMove> moves) {
        jdbc.batchUpdate(INSERT, moves, 500, (statement, move) -> {
            statement.setObject(1, move.strand());
            statement.setObject(2, move.document().id());
            statement.setInt(3, move.number());
            statement.setObject(4, move.document().date());
            statement.setInt(5, move.document().kind().ordinal());
            statement.setString(6, MoveText.of(move.move()));
        });
    }

    private static StrandMove read(ResultSet row) throws SQLException {
        return new StrandMove(
                row.getObject("strand_id", UUID.class),
                PostingStore.reference(row),
                row.getInt("move_no"),
                MoveText.read(row.getString("move")));
    }
}
