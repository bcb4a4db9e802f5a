package patinary.pieces;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.Page;
import patinary.web.Window;

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

    private static final String FROM = " from piece p join piece_state s on s.piece_id = p.id ";

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

    private record Counted(String where, Map<String, Object> values) {}

    private final JdbcClient jdbc;
    private final Readings readings;

    PieceList(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    Page<Row> find(PieceQuery query, Window window) {
        Map<String, Object> values = new HashMap<>();
        String where = where(query, values);
        long total = readings.of(new Counted(where, Map.copyOf(values)), () -> count(where, values));
        values.put("offset", window.offset());
        values.put("size", window.size());
        String shown = where;
        if (where.isEmpty() && query.order() == PieceQuery.Sort.NEWEST) {
            shown = lastDay(window, values);
        }
        List<Row> rows = jdbc.sql(ROWS.formatted(FROM, shown, query.order().order()))
                .params(values)
                .query(Row.class)
                .list();
        return Page.of(window, rows, total);
    }

    /** The pieces found on the days that the window and all before it show: an index has the days in order, so that no more are sorted. */
    private String lastDay(Window window, Map<String, Object> values) {
        return jdbc.sql("select found_on from piece_state order by found_on desc nulls last"
                        + " offset :last rows fetch next 1 row only")
                .param("last", window.offset() + window.size() - 1)
                .query(LocalDate.class)
                .optional()
                .map(day -> {
                    values.put("day", day);
                    return "where s.found_on >= :day";
                })
                .orElse("");
    }

    private long count(String where, Map<String, Object> values) {
        return jdbc.sql("select count(*)" + FROM + where)
                .params(values)
                .query(Long.class)
                .single();
    }

    /** The pieces still in her hands that could be joined: not sold, not let go. */
    List<Choice> here() {
        return jdbc.sql("select p.id, p.code, p.title from piece p join piece_state s on s.piece_id = p.id"
                        + " where s.state not in ('SOLD', 'GONE') order by p.code")
                .query((row, number) ->
                        Choice.named(row.getString("id"), row.getString("code") + " " + row.getString("title")))
                .list();
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

    private static String where(PieceQuery query, Map<String, Object> values) {
        List<String> parts = new ArrayList<>();
        if (!query.words().isBlank()) {
            values.put("words", like(query.words()));
            parts.add("(lower(p.code) like :words escape '!' or lower(p.title) like :words escape '!' or exists"
                    + " (select 1 from piece_tag t where t.piece_id = p.id and lower(t.tag) like :words escape '!'))");
        }
        if (Stream.of(PieceState.values()).anyMatch(state -> state.name().equals(query.state()))) {
            values.put("state", query.state());
            parts.add("s.state = :state");
        }
        if (!query.place().isEmpty()) {
            values.put("place", query.place());
            parts.add("p.place = :place");
        }
        byId(query.kind(), "kind", "p.kind_id = :kind", parts, values);
        byId(query.style(), "style", "p.style_id = :style", parts, values);
        byId(
                query.source(),
                "source",
                "exists (select 1 from receipt_piece rp join receipt r on r.id = rp.receipt_id"
                        + " where rp.piece_id = p.id and r.source_id = :source)",
                parts,
                values);
        return parts.isEmpty() ? "" : "where " + String.join(" and ", parts);
    }

    private static void byId(
            String typed, String name, String condition, List<String> parts, Map<String, Object> values) {
        Ids.read(typed).ifPresent(id -> {
            values.put(name, id);
            parts.add(condition);
        });
    }

    /** The words as a pattern; the signs that mean something in a pattern mean themselves here. */
    private static String like(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT);
        return "%" + plain.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
    }
}
