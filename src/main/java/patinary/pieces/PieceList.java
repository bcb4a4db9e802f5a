package patinary.pieces;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.lists.ListTotals;
import patinary.lists.Where;
import patinary.web.Choice;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** Finds pieces for the list. */
@Repository
@Transactional(readOnly = true)
class PieceList {

    /** A piece in the list; amounts in minor units. */
    record Row(
            UUID id,
            String code,
            String title,
            @Nullable String kind,
            @Nullable String style,
            String place,
            PieceState state,
            @Nullable LocalDate since,
            @Nullable Long priceMinor,
            long landedMinor) {}

    private static final String FROM = " from piece p join piece_state s on s.piece_id = p.id";

    /** The pieces of the page are found first; only theirs are looked up elsewhere. */
    private static final String ROWS = """
            select p.id, p.code, p.title, k.name as kind, y.name as style, p.place, s.state, s.since, s.price_minor,
                   coalesce(f.landed_minor, 0) as landed_minor
            from (select p.id%1$s%2$s order by %3$s offset :offset rows fetch next :size rows only) shown
            join piece p on p.id = shown.id
            join piece_state s on s.piece_id = p.id
            left join piece_figures f on f.piece_id = p.id
            left join object_kind k on k.id = p.kind_id
            left join style y on y.id = p.style_id
            order by %3$s""";

    private final JdbcClient jdbc;
    private final ListTotals totals;

    PieceList(JdbcClient jdbc, ListTotals totals) {
        this.jdbc = jdbc;
        this.totals = totals;
    }

    Page<Row> find(PieceQuery query, Window window) {
        Where where = where(query);
        long total = totals.of("select count(*)" + FROM + where.sql(), where.values(), Long.class);
        if (where.isEmpty() && query.order() == PieceQuery.Sort.NEWEST) {
            lastDay(window).ifPresent(day -> where.and("s.found_on >= :day", "day", day));
        }
        List<Row> rows = jdbc.sql(
                        ROWS.formatted(FROM, where.sql(), query.order().order()))
                .params(where.values())
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        return Page.of(window, rows, total);
    }

    /** The last of the days whose pieces the window and all before it show: an index has the days in order, so that no more are sorted. */
    private Optional<LocalDate> lastDay(Window window) {
        return jdbc.sql("select found_on from piece_state order by found_on desc nulls last"
                        + " offset :last rows fetch next 1 row only")
                .param("last", window.end() - 1)
                .query(LocalDate.class)
                .optional();
    }

    /** Where pieces were bought, for the filter. */
    List<Choice> sources() {
        return jdbc.sql("select id, name from source order by name")
                .query((row, number) -> Choice.named(row.getString("id"), row.getString("name")))
                .list();
    }

    /** Where there are pieces, for the filter and while a place is typed. */
    List<Choice> places() {
        return jdbc.sql("select distinct place from piece where place <> '' order by place")
                .query((row, number) -> Choice.named(row.getString("place"), row.getString("place")))
                .list();
    }

    private static Where where(PieceQuery query) {
        Where where = new Where()
                .words(
                        "(" + Words.in("p.code", "p.title")
                                + " or exists (select 1 from piece_tag t where t.piece_id = p.id and "
                                + Words.in("t.tag") + "))",
                        query.words())
                .id(query.kind(), "p.kind_id = :kind", "kind")
                .id(query.style(), "p.style_id = :style", "style")
                .id(
                        query.source(),
                        "exists (select 1 from receipt_piece rp join receipt r on r.id = rp.receipt_id"
                                + " where rp.piece_id = p.id and r.source_id = :source)",
                        "source");
        if (Stream.of(PieceState.values()).anyMatch(state -> state.name().equals(query.state()))) {
            where.and("s.state = :state", "state", query.state());
        }
        if (!query.place().isEmpty()) {
            where.and("p.place = :place", "place", query.place());
        }
        return where;
    }
}
