package patinary.buying;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.DocumentKind;
import patinary.lists.LatestDays;
import patinary.lists.ListTotals;
import patinary.lists.Where;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** Finds receipts for the list. */
@Repository
@Transactional(readOnly = true)
class ReceiptList {

    /**
     * A receipt in the list; {@code what} is its first lines, {@code owed} what is not paid yet,
     * {@code open} whether a difference to its total is not known yet.
     */
    record Row(UUID id, LocalDate date, String source, String what, long total, long owed, boolean open) {}

    /** The rows found, and the total of all of them on every page. */
    record Found(Page<Row> rows, long total) {}

    /** What is asked for; empty answers ask for everything. */
    record Query(String text, String kind, String source, String year) {}

    /** What {@link Query#kind} asks for beside the kinds of lines: receipts with an open question. */
    static final String OPEN = "OPEN";

    /** So many lines say what a receipt was about. */
    private static final int TITLES = 3;

    private static final String QUESTION = """
            exists (select 1 from receipt_line ql where ql.receipt_id = r.id and ql.title = :question
                    union all
                    select 1 from receipt_charge qc where qc.receipt_id = r.id and qc.title = :question)""";

    /** Beginning with the documents, whose index has their days in order. */
    private static final String FROM =
            " from document d left join receipt r on r.id = d.id left join source s on s.id = r.source_id";

    private static final String WORDS = """
            (%s or exists (select 1 from receipt_line l where l.receipt_id = r.id and %s))""".formatted(Words.in("coalesce(s.name, '')", "d.note"), Words.in("l.title"));

    private static final String RECEIPTS = "d.kind_rank = " + DocumentKind.RECEIPT.ordinal();

    /** The receipts of the page are found first; only theirs are looked up elsewhere. */
    private static final String ROWS = """
            select r.id, d.doc_date as date, coalesce(s.name, '') as source, r.till_total_minor as total,
                   (select cast(coalesce(-sum(p.amount_minor), 0) as bigint)
                    from posting p
                    where p.document_id = r.id and p.origin_id is null and p.account = 'PAYABLE')
                   + (select cast(coalesce(-sum(p.amount_minor), 0) as bigint)
                      from posting p
                      where p.origin_id = r.id and p.account = 'PAYABLE') as owed,
                   %s as open
            from (select r.id%s%%s
                  order by d.doc_date desc, d.recorded_at desc, d.id
                  offset :offset rows fetch next :size rows only) found
            join receipt r on r.id = found.id
            join document d on d.id = r.id
            left join source s on s.id = r.source_id
            order by d.doc_date desc, d.recorded_at desc, d.id""".formatted(QUESTION, FROM);

    private final JdbcClient jdbc;
    private final ListTotals totals;
    private final LatestDays days;
    private final OpenQuestion question;

    ReceiptList(JdbcClient jdbc, ListTotals totals, LatestDays days, OpenQuestion question) {
        this.jdbc = jdbc;
        this.totals = totals;
        this.days = days;
        this.question = question;
    }

    Found find(Query query, Window window) {
        Where where = where(query);
        Totals found = totals.of(
                "select count(*) as receipts, cast(coalesce(sum(r.till_total_minor), 0) as bigint) as minor" + FROM
                        + where.sql(RECEIPTS),
                where.values(),
                Totals.class);
        days.narrow(where, DocumentKind.RECEIPT, window);
        List<Stored> rows = jdbc.sql(ROWS.formatted(where.sql(RECEIPTS)))
                .params(where.values())
                .param("question", question.title())
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Stored.class)
                .list();
        return new Found(Page.of(window, named(rows), found.receipts()), found.minor());
    }

    /** The years in which something was bought, latest first. */
    List<Integer> years() {
        return jdbc.sql("select distinct extract(year from d.doc_date) as y from document d where " + RECEIPTS
                        + " order by y desc")
                .query((row, number) -> row.getInt(1))
                .list();
    }

    private record Totals(long receipts, long minor) {}

    private record Stored(UUID id, LocalDate date, String source, long total, long owed, boolean open) {}

    private record Title(UUID receiptId, String title) {}

    /** Adds the titles of the lines, in one query for the whole page. */
    private List<Row> named(List<Stored> rows) {
        if (rows.isEmpty()) {
            return List.of();
        }
        Map<UUID, List<String>> titles = jdbc
                .sql("select receipt_id, title from receipt_line where receipt_id in (:ids) order by receipt_id, line")
                .param("ids", rows.stream().map(Stored::id).toList())
                .query(Title.class)
                .list()
                .stream()
                .collect(
                        Collectors.groupingBy(Title::receiptId, Collectors.mapping(Title::title, Collectors.toList())));
        return rows.stream()
                .map(row -> new Row(
                        row.id(),
                        row.date(),
                        row.source(),
                        what(titles.getOrDefault(row.id(), List.of())),
                        row.total(),
                        row.owed(),
                        row.open()))
                .toList();
    }

    private static String what(List<String> titles) {
        String first = titles.stream().limit(TITLES).collect(Collectors.joining(", "));
        return titles.size() > TITLES ? first + " …" : first;
    }

    private Where where(Query query) {
        Where where = new Where().words(WORDS, query.text());
        where.id(query.source(), "r.source_id = :source", "source");
        if (Stream.of(LineKind.values()).anyMatch(kind -> kind.name().equals(query.kind()))) {
            where.and(
                    "exists (select 1 from receipt_line k where k.receipt_id = r.id and k.kind = :kind)",
                    "kind",
                    query.kind());
        }
        if (OPEN.equals(query.kind())) {
            where.and(QUESTION, "question", question.title());
        }
        if (query.year().matches("[0-9]{4}")) {
            int year = Integer.parseInt(query.year());
            where.and("d.doc_date between :first and :last", "first", LocalDate.of(year, 1, 1))
                    .with("last", LocalDate.of(year, 12, 31));
        }
        return where;
    }
}
