package patinary.ledger;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import patinary.durable.ManyRows;
import patinary.money.Amount;

/** The stored postings: the one place that writes them. */
@Repository
class PostingStore {

    /** PostgreSQL would read all documents once to join those of a thousand postings. */
    private static final String SOME = """
            select p.*, (select d.kind_rank from document d where d.id = p.document_id) as kind_rank from posting p
            where %s order by p.document_id, p.line""";

    private static final List<String> COLUMNS = List.of(
            "document_id",
            "line",
            "doc_date",
            "account",
            "place_id",
            "category",
            "piece_id",
            "supply_id",
            "party_id",
            "origin_id",
            "estimated",
            "amount_minor",
            "quantity",
            "move_no",
            "meant_piece_id");

    private record Row(int line, Entry entry) {}

    private final JdbcTemplate jdbc;
    private final ManyRows many;

    PostingStore(JdbcTemplate jdbc, ManyRows many) {
        this.jdbc = jdbc;
        this.many = many;
    }

    /** All stored postings by document, each in its order. They are put in order here: a database would do it in a file. */
    Map<UUID, List<Entry>> all() {
        Map<UUID, DocumentKind> kinds = new HashMap<>();
        jdbc.query("select id, kind_rank from document", row -> {
            kinds.put(row.getObject("id", UUID.class), DocumentKind.values()[row.getInt("kind_rank")]);
        });
        Map<UUID, List<Row>> rows = new HashMap<>();
        jdbc.query("select p.* from posting p", row -> {
            UUID document = row.getObject("document_id", UUID.class);
            DocumentRef reference = new DocumentRef(
                    document,
                    Objects.requireNonNull(kinds.get(document)),
                    row.getDate("doc_date").toLocalDate());
            rows.computeIfAbsent(document, id -> new ArrayList<>())
                    .add(new Row(row.getInt("line"), read(row, reference)));
        });
        Map<UUID, List<Entry>> all = new HashMap<>();
        rows.forEach((document, several) -> {
            several.sort(Comparator.comparingInt(Row::line));
            all.put(document, several.stream().map(Row::entry).toList());
        });
        return all;
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
        ManyRows.Filling rows = many.into("posting", COLUMNS);
        for (List<Entry> entries : byDocument) {
            for (int line = 0; line < entries.size(); line++) {
                rows.add(row(line, entries.get(line)));
            }
        }
        rows.end();
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
        return read(row, reference(row));
    }

    private static Entry read(ResultSet row, DocumentRef document) throws SQLException {
        Tags tags = new Tags(
                row.getObject("place_id", UUID.class),
                row.getString("category"),
                row.getObject("piece_id", UUID.class),
                row.getObject("supply_id", UUID.class),
                row.getObject("party_id", UUID.class),
                row.getObject("origin_id", UUID.class),
                row.getBoolean("estimated"));
        Posting posting = new Posting(
                document,
                Account.valueOf(row.getString("account")),
                tags,
                Amount.of(row.getLong("amount_minor")),
                Objects.requireNonNullElse(row.getBigDecimal("quantity"), BigDecimal.ZERO));
        return new Entry(posting, row.getInt("move_no"), row.getObject("meant_piece_id", UUID.class));
    }

    private static @Nullable Object[] row(int line, Entry entry) {
        Posting posting = entry.posting();
        Tags tags = posting.tags();
        return new @Nullable Object[] {
            posting.document().id(),
            line,
            posting.document().date(),
            posting.account().name(),
            tags.place(),
            tags.category(),
            tags.piece(),
            tags.supply(),
            tags.party(),
            tags.origin(),
            tags.estimated(),
            posting.amount().minor(),
            posting.quantity(),
            entry.move(),
            entry.meant()
        };
    }
}
