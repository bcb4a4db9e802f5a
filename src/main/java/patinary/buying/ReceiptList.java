package patinary.buying;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.web.Page;
import patinary.web.Window;

/** Finds receipts for the list. */
@Repository
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

    private static final String QUESTION = """
            exists (select 1 from receipt_line ql where ql.receipt_id = r.id and ql.title = ?
                    union all
                    select 1 from receipt_charge qc where qc.receipt_id = r.id and qc.title = ?)""";

    private static final String FROM = """
            from receipt r
            join document d on d.id = r.id
            left join source s on s.id = r.source_id
            left join owed_by_shop o on o.receipt_id = r.id""";

    private final JdbcClient jdbc;
    private final OpenQuestion question;

    ReceiptList(JdbcClient jdbc, OpenQuestion question) {
        this.jdbc = jdbc;
        this.question = question;
    }

    Found find(Query query, Window window) {
        List<Object> values = new ArrayList<>();
        String where = where(query, values);
        Totals totals = jdbc.sql("select count(*), coalesce(sum(r.till_total_minor), 0) " + FROM + where)
                .params(values)
                .query((row, number) -> new Totals(row.getLong(1), row.getLong(2)))
                .single();
        List<Row> rows = rows(where, values, window);
        return new Found(Page.of(window, named(rows), totals.count()), totals.amount());
    }

    private List<Row> rows(String where, List<Object> values, Window window) {
        List<Object> paged = new ArrayList<>(List.of(question.title(), question.title()));
        paged.addAll(values);
        paged.add(window.offset());
        paged.add(window.size());
        return jdbc.sql("select r.id, d.doc_date, coalesce(s.name, '') as source_name, r.till_total_minor,"
                        + " coalesce(o.amount_minor, 0) as owed_minor, case when "
                        + QUESTION
                        + " then 1 else 0 end as questions "
                        + FROM
                        + where
                        + " order by d.doc_date desc, d.recorded_at desc, d.id offset ? rows fetch next ? rows only")
                .params(paged)
                .query((row, number) -> new Row(
                        row.getObject("id", UUID.class),
                        row.getDate("doc_date").toLocalDate(),
                        row.getString("source_name"),
                        "",
                        row.getLong("till_total_minor"),
                        row.getLong("owed_minor"),
                        row.getInt("questions") > 0))
                .list();
    }

    /** The years in which something was bought, latest first. */
    List<Integer> years() {
        return jdbc.sql("select distinct extract(year from d.doc_date) as y from receipt r"
                        + " join document d on d.id = r.id order by y desc")
                .query((row, number) -> row.getInt(1))
                .list();
    }

    private record Totals(long count, long amount) {}

    private record Title(UUID receipt, String title) {}

    /** Adds the titles of the lines, in one query for the whole page. */
    private List<Row> named(List<Row> rows) {
        if (rows.isEmpty()) {
            return rows;
        }
        List<Title> titles = jdbc.sql("select receipt_id, title from receipt_line where receipt_id in (:ids)"
                        + " order by receipt_id, line")
                .param("ids", rows.stream().map(Row::id).toList())
                .query((row, number) -> new Title(row.getObject("receipt_id", UUID.class), row.getString("title")))
                .list();
        return rows.stream()
                .map(row -> new Row(
                        row.id(),
                        row.date(),
                        row.source(),
                        what(titles, row.id()),
                        row.total(),
                        row.owed(),
                        row.open()))
                .toList();
    }

    private static String what(List<Title> titles, UUID receipt) {
        List<String> own = titles.stream()
                .filter(title -> title.receipt().equals(receipt))
                .map(Title::title)
                .toList();
        String first = String.join(", ", own.subList(0, Math.min(3, own.size())));
        return own.size() > 3 ? first + " …" : first;
    }

    private String where(Query query, List<Object> values) {
        StringBuilder where = new StringBuilder(" where 1 = 1");
        text(query.text(), where, values);
        if (List.of(LineKind.values()).stream().anyMatch(kind -> kind.name().equals(query.kind()))) {
            where.append(" and exists (select 1 from receipt_line k where k.receipt_id = r.id and k.kind = ?)");
            values.add(query.kind());
        }
        if (OPEN.equals(query.kind())) {
            where.append(" and ").append(QUESTION);
            values.addAll(List.of(question.title(), question.title()));
        }
        UUID source = uuid(query.source());
        if (source != null) {
            where.append(" and r.source_id = ?");
            values.add(source);
        }
        if (query.year().matches("[0-9]{4}")) {
            int year = Integer.parseInt(query.year());
            where.append(" and d.doc_date between ? and ?");
            values.add(LocalDate.of(year, 1, 1));
            values.add(LocalDate.of(year, 12, 31));
        }
        return where.toString();
    }

    /** Looks for words in the source, the note and what was bought; signs that mean "anything" stand for themselves. */
    private static void text(String text, StringBuilder where, List<Object> values) {
        if (!text.isBlank()) {
            String like = "%" + text.strip().toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
            where.append(" and (lower(coalesce(s.name, '')) like ? escape '!' or lower(d.note) like ? escape '!'"
                    + " or exists (select 1 from receipt_line l where l.receipt_id = r.id"
                    + " and lower(l.title) like ? escape '!'))");
            values.addAll(List.of(like, like, like));
        }
    }

    private static @Nullable UUID uuid(String text) {
        try {
            return text.isBlank() ? null : UUID.fromString(text);
        } catch (IllegalArgumentException unknown) {
            return null;
        }
    }
}
