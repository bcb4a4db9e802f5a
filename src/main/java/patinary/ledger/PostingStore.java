package patinary.ledger;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

    private static final String SOME = """
            select p.*, d.kind_rank from posting p join document d on d.id = p.document_id
            where %s order by p.document_id, p.line""";

    private static final String INSERT = """
            insert into posting (document_id, line, doc_date, account, place_id, category, piece_id, supply_id,
                party_id, origin_id, estimated, amount_minor, quantity, move_no, meant_piece_id)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";

    private record Row(int line, Entry entry) {}

    private final JdbcTemplate jdbc;

    PostingStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** All stored postings by document, each in its order. */
    Map<UUID, List<Entry>> all() {
        return jdbc.query(ALL, (row, number) -> read(row)).stream().collect(byDocument());
    }

    static Map<UUID, List<Entry>> grouped(Collection<Entry> entries) {
        return entries.stream().collect(byDocument());
    }

    /** All postings of these documents, each document's in their order. */
    List<Entry> of(Collection<UUID> documents) {
        return Batches.asked(
                documents,
                ids -> jdbc.query(
                        SOME.formatted("p.document_id in (" + Batches.marks(ids) + ")"),
                        (row, number) -> read(row),
                        ids.toArray()));
    }

    /** All postings of what these pieces cost. */
    List<Entry> pieceCosts(Collection<UUID> pieces) {
        return Batches.asked(
                        pieces,
                        ids -> jdbc.query(
                                SOME.formatted("p.piece_id in (" + Batches.marks(ids) + ")"),
                                (row, number) -> read(row),
                                ids.toArray()))
                .stream()
                .filter(Entry::isPieceCost)
                .toList();
    }

    Amount heldBefore(UUID place, LocalDate day) {
        return Amount.of(Objects.requireNonNull(jdbc.queryForObject(
                "select coalesce(sum(amount_minor), 0) from posting where account = 'MONEY' and place_id = ? and doc_date < ?",
                Long.class,
                place,
                day)));
    }

    /** All postings of a money place on a day and later. */
    List<Entry> moneyFrom(UUID place, LocalDate day) {
        return jdbc.query(
                SOME.formatted("p.account = 'MONEY' and p.place_id = ? and p.doc_date >= ?"),
                (row, number) -> read(row),
                place,
                day);
    }

    void delete(Collection<UUID> documents) {
        jdbc.batchUpdate(
                "delete from posting where document_id = ?",
                documents.stream().map(id -> new Object[] {id}).toList());
    }

    void insert(Collection<List<Entry>> byDocument) {
        List<Row> rows = byDocument.stream()
                .flatMap(entries ->
                        IntStream.range(0, entries.size()).mapToObj(line -> new Row(line, entries.get(line))))
                .toList();
        jdbc.batchUpdate(INSERT, rows, 500, PostingStore::write);
    }

    private static Collector<Entry, ?, Map<UUID, List<Entry>>> byDocument() {
        return Collectors.groupingBy(entry -> entry.document().id(), LinkedHashMap::new, Collectors.toList());
    }

    static DocumentRef reference(ResultSet row) throws SQLException {
        return new DocumentRef(
                row.getObject("document_id", UUID.class),
                DocumentKind.values()[row.getInt("kind_rank")],
                row.getDate("doc_date").toLocalDate());
    }

    static Entry read(ResultSet row) throws SQLException {
        Tags tags = new Tags(
                row.getObject("place_id", UUID.class),
                row.getString("category"),
                row.getObject("piece_id", UUID.class),
                row.getObject("supply_id", UUID.class),
                row.getObject("party_id", UUID.class),
                row.getObject("origin_id", UUID.class),
                row.getBoolean("estimated"));
        Posting posting = new Posting(
                reference(row),
                Account.valueOf(row.getString("account")),
                tags,
                Amount.of(row.getLong("amount_minor")),
                Objects.requireNonNullElse(row.getBigDecimal("quantity"), BigDecimal.ZERO));
        return new Entry(posting, row.getInt("move_no"), row.getObject("meant_piece_id", UUID.class));
    }

    private static void write(PreparedStatement statement, Row row) throws SQLException {
        Posting posting = row.entry().posting();
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
        statement.setInt(14, row.entry().move());
        id(statement, 15, row.entry().meant());
    }

    private static void id(PreparedStatement statement, int index, @Nullable UUID id) throws SQLException {
        if (id == null) {
            statement.setNull(index, Types.OTHER);
        } else {
            statement.setObject(index, id);
        }
    }
}
