package patinary.ledger;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import patinary.money.Amount;

/** The stored postings: the one place that writes them. */
@Repository
class PostingStore {

    private static final String ALL = """
            select p.*, d.kind_rank from posting p join document d on d.id = p.document_id
            order by p.document_id, p.line""";

    private static final String INSERT = """
            insert into posting (document_id, line, doc_date, account, place_id, category, piece_id, supply_id,
                party_id, origin_id, estimated, amount_minor, quantity)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";

    private record Row(int line, Posting posting) {}

    private final JdbcTemplate jdbc;

    PostingStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** All stored postings by document, each in its order. */
    Map<UUID, List<Posting>> all() {
        return jdbc.query(ALL, (row, number) -> read(row)).stream().collect(byDocument());
    }

    static Map<UUID, List<Posting>> grouped(Collection<Posting> postings) {
        return postings.stream().collect(byDocument());
    }

    void delete(Collection<UUID> documents) {
        jdbc.batchUpdate(
                "delete from posting where document_id = ?",
                documents.stream().map(id -> new Object[] {id}).toList());
    }

    void insert(Collection<List<Posting>> byDocument) {
        List<Row> rows = byDocument.stream()
                .flatMap(postings -> java.util.stream.IntStream.range(0, postings.size())
                        .mapToObj(line -> new Row(line, postings.get(line))))
                .toList();
        jdbc.batchUpdate(INSERT, rows, 500, PostingStore::write);
    }

    List<Replay.Uncosted> uncosted() {
        return jdbc.query(
                """
                select u.*, d.kind_rank, d.doc_date from uncosted_use u join document d on d.id = u.document_id
                order by u.document_id, u.line""",
                (row, number) -> new Replay.Uncosted(
                        reference(row),
                        row.getObject("supply_id", UUID.class),
                        StockPlace.valueOf(row.getString("place")),
                        row.getBigDecimal("quantity"),
                        row.getBoolean("through_pot")));
    }

    void replaceUncosted(List<Replay.Uncosted> uses) {
        jdbc.update("delete from uncosted_use");
        int line = 0;
        for (Replay.Uncosted use : uses) {
            jdbc.update(
                    "insert into uncosted_use (document_id, line, supply_id, place, quantity, through_pot) values (?, ?, ?, ?, ?, ?)",
                    use.document().id(),
                    line++,
                    use.supply(),
                    use.place().name(),
                    use.quantity(),
                    use.throughPot());
        }
    }

    private static java.util.stream.Collector<Posting, ?, Map<UUID, List<Posting>>> byDocument() {
        return Collectors.groupingBy(p -> p.document().id(), LinkedHashMap::new, Collectors.toList());
    }

    private static DocumentRef reference(ResultSet row) throws SQLException {
        return new DocumentRef(
                row.getObject("document_id", UUID.class),
                DocumentKind.values()[row.getInt("kind_rank")],
                row.getDate("doc_date").toLocalDate());
    }

    static Posting read(ResultSet row) throws SQLException {
        Tags tags = new Tags(
                row.getObject("place_id", UUID.class),
                row.getString("category"),
                row.getObject("piece_id", UUID.class),
                row.getObject("supply_id", UUID.class),
                row.getObject("party_id", UUID.class),
                row.getObject("origin_id", UUID.class),
                row.getBoolean("estimated"));
        return new Posting(
                reference(row),
                Account.valueOf(row.getString("account")),
                tags,
                Amount.of(row.getLong("amount_minor")),
                Objects.requireNonNullElse(row.getBigDecimal("quantity"), BigDecimal.ZERO));
    }

    private static void write(PreparedStatement statement, Row row) throws SQLException {
        Posting posting = row.posting();
        Tags tags = posting.tags();
        statement.setObject(1, posting.document().id());
        statement.setInt(2, row.line());
        statement.setObject(3, posting.document().date());
        statement.setString(4, posting.account().name());
        id(statement, 5, tags.place());
        statement.setString(6, tags.category());
        id(statement, 7, tags.piece());
        id(statement, 8, tags.supply());
        id(statement, 9, tags.party());
        id(statement, 10, tags.origin());
        statement.setBoolean(11, tags.estimated());
        statement.setLong(12, posting.amount().minor());
        statement.setBigDecimal(13, posting.quantity());
    }

    private static void id(PreparedStatement statement, int index, @Nullable UUID id) throws SQLException {
        if (id == null) {
            statement.setNull(index, Types.OTHER);
        } else {
            statement.setObject(index, id);
        }
    }
}
