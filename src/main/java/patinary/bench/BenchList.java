package patinary.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.DocumentKind;
import patinary.lists.LatestDays;
import patinary.lists.ListTotals;
import patinary.lists.Where;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** The list of bench entries. */
@Repository
@Transactional(readOnly = true)
class BenchList {

    private static final String FROM = " from bench_entry e join document d on d.id = e.id";

    private static final String SUMS =
            "select count(*) as entries, cast(coalesce(sum(e.minutes), 0) as bigint) as minutes" + FROM;

    private static final String WORDS =
            """
            (%s
             or exists (select 1 from bench_piece bp join piece p on p.id = bp.piece_id
                        where bp.bench_entry_id = e.id and %s)
             or exists (select 1 from bench_use bu join supply s on s.id = bu.supply_id
                        where bu.bench_entry_id = e.id and %s))""".formatted(Words.in("e.done", "d.note"), Words.in("p.code", "p.title"), Words.in("s.name"));

    private static final String IN_ORDER =
            " order by d.doc_date desc, d.recorded_at desc, cast(e.id as varchar(36)) desc";

    /** The entries of the page are found first; only theirs are added up. */
    private static final String ROWS = """
            select e.id, d.doc_date as dated, e.minutes, e.done,
                   (select cast(coalesce(sum(p.amount_minor), 0) as bigint) from posting_about p
                    where p.about_id = e.id and p.supply_id is not null and p.account not in ('BENCH', 'SHELF')) as cost_minor,
                   exists (select 1 from uncosted_use u where u.document_id = e.id) as waiting,
                   (select count(*) from bench_mishap m where m.bench_entry_id = e.id) as mishaps,
                   (select count(*) from bench_piece bp where bp.bench_entry_id = e.id) as pieces
            from (select e.id%1$s%%s%2$s
                  offset :offset rows fetch next :size rows only) found
            join bench_entry e on e.id = found.id
            join document d on d.id = e.id%2$s""".formatted(FROM, IN_ORDER);

    /** As many as a list on a phone can be looked through. */
    private static final int CHOICES = 100;

    /**
     * What the list is narrowed to.
     *
     * @param from the first day; null for no bound
     * @param to the last day; null for no bound
     */
    record Filter(
            String words,
            @Nullable UUID piece,
            @Nullable UUID supply,
            boolean mishapsOnly,
            @Nullable LocalDate from,
            @Nullable LocalDate to) {

        boolean isAnything() {
            return !where(this).isEmpty();
        }
    }

    /** How many entries there are in all, and their minutes. */
    record Totals(long entries, long minutes) {}

    /** A page of the list, with what all of it comes to. */
    record Found(Page<Row> rows, long minutes) {}

    /** One entry. */
    record Row(
            UUID id,
            LocalDate dated,
            int minutes,
            String done,
            long costMinor,
            boolean waiting,
            long mishaps,
            long pieces) {}

    /** A piece of an entry, as a label. */
    record Label(UUID entryId, UUID pieceId, String code, String title, boolean ready) {}

    private final JdbcClient jdbc;
    private final ListTotals totals;
    private final LatestDays days;

    BenchList(JdbcClient jdbc, ListTotals totals, LatestDays days) {
        this.jdbc = jdbc;
        this.totals = totals;
        this.days = days;
    }

    Found find(Filter filter, Window window) {
        Where where = where(filter);
        Totals total = totals.of(SUMS + where.sql(), where.values(), Totals.class);
        days.narrow(where, DocumentKind.BENCH_ENTRY, window);
        List<Row> rows = jdbc.sql(ROWS.formatted(where.sql()))
                .params(where.values())
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        return new Found(Page.of(window, rows, total.entries()), total.minutes());
    }

    /** The pieces of the entries on one page of the list, by entry. */
    Map<UUID, List<Label>> labels(List<Row> rows) {
        if (rows.isEmpty()) {
            return Map.of();
        }
        return jdbc.sql("""
                        select bp.bench_entry_id as entry_id, p.id as piece_id, p.code, p.title, bp.ready
                        from bench_piece bp join piece p on p.id = bp.piece_id
                        where bp.bench_entry_id in (:entries) order by p.code
                        """).param("entries", rows.stream().map(Row::id).toList()).query(Label.class).list().stream()
                .collect(Collectors.groupingBy(Label::entryId));
    }

    /** The latest pieces that were worked on, and the chosen one; any other is found by its words. */
    List<Choice> pieceChoices(@Nullable UUID chosen) {
        return jdbc.sql("""
                        select id, code, title from (
                            select p.id, p.code, p.title from piece p
                            where exists (select 1 from bench_piece bp where bp.piece_id = p.id)
                            order by p.code desc
                            fetch first :most rows only) latest
                        union
                        select id, code, title from piece where id in (:chosen)
                        order by 2 desc""")
                .param("most", CHOICES)
                .param("chosen", Ids.orNone(Stream.ofNullable(chosen).toList()))
                .query((row, number) -> Choice.named(
                        row.getObject("id", UUID.class).toString(),
                        row.getString("code") + " " + row.getString("title")))
                .list();
    }

    private static Where where(Filter filter) {
        Where where = new Where().words(WORDS, filter.words());
        if (filter.piece() != null) {
            where.and(
                    "exists (select 1 from bench_piece bp where bp.bench_entry_id = e.id and bp.piece_id = :piece)",
                    "piece",
                    filter.piece());
        }
        if (filter.supply() != null) {
            where.and(
                    "exists (select 1 from bench_use bu where bu.bench_entry_id = e.id and bu.supply_id = :supply)",
                    "supply",
                    filter.supply());
        }
        if (filter.from() != null) {
            where.and("d.doc_date >= :from", "from", filter.from());
        }
        if (filter.to() != null) {
            where.and("d.doc_date <= :to", "to", filter.to());
        }
        if (filter.mishapsOnly()) {
            where.and("exists (select 1 from bench_mishap m where m.bench_entry_id = e.id)");
        }
        return where;
    }
}
