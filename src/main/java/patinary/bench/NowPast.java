package patinary.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.bench.NowRows.LastUse;
import patinary.bench.NowRows.StyleRow;
import patinary.supplies.ToolUse;

/** What earlier entries say about the next one: supplies in the order she last used them, and her own words. */
@Repository
class NowPast {

    /** As many earlier entries as say how she works now. */
    private static final int ENTRIES = 120;

    private static final int USES_OF_A_STYLE = 40;
    private static final int WORDS = 10;

    /** All three kinds in one question; of each as many as say how she works now. */
    private static final String LATEST_WORDS = """
            select kind, words from (
                select 'DONE' as kind, e.done as words,
                       row_number() over (order by d.doc_date desc, d.recorded_at desc) as latest
                from bench_entry e join document d on d.id = e.id where e.done <> ''
                union all
                select 'SURFACE', m.surface, row_number() over (order by d.doc_date desc, d.recorded_at desc)
                from bench_mishap m join document d on d.id = m.bench_entry_id where m.surface <> ''
                union all
                select 'WHAT', m.what, row_number() over (order by d.doc_date desc, d.recorded_at desc)
                from bench_mishap m join document d on d.id = m.bench_entry_id where m.what <> '') said
            where latest <= :most
            order by latest
            """;

    /** Her own words for what was done, for surfaces and for what went wrong. */
    record Words(List<String> phrases, List<String> surfaces, List<String> mishaps) {}

    private record Said(String kind, String words) {}

    private final JdbcClient jdbc;

    NowPast(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What was typed for each supply when it was last used, the last used first. */
    Map<UUID, String> lastUsed() {
        Map<UUID, String> last = new LinkedHashMap<>();
        jdbc.sql("""
                        select supply_id, typed from (
                            select bu.supply_id, bu.typed, bu.line, d.doc_date, d.recorded_at,
                                   row_number() over (partition by bu.supply_id
                                       order by d.doc_date desc, d.recorded_at desc, bu.line) as latest
                            from bench_use bu join document d on d.id = bu.bench_entry_id) used
                        where latest = 1
                        order by doc_date desc, recorded_at desc, line
                        """).query(row -> {
            last.put(row.getObject("supply_id", UUID.class), row.getString("typed"));
        });
        return last;
    }

    /** The styles on whose pieces supplies were used. */
    List<StyleRow> styles() {
        Map<UUID, String> names = new LinkedHashMap<>();
        Map<UUID, List<LastUse>> last = new LinkedHashMap<>();
        Map<UUID, LinkedHashSet<UUID>> order = new LinkedHashMap<>();
        jdbc.sql("""
                        with touched as (
                            select distinct p.style_id, bu.bench_entry_id, bu.line, bu.supply_id, bu.typed, bu.estimated,
                                   bu.tool_uses is not null as tool, d.doc_date, d.recorded_at
                            from bench_use bu
                            join bench_use_piece up on up.bench_entry_id = bu.bench_entry_id and up.line = bu.line
                            join piece p on p.id = up.piece_id
                            join document d on d.id = bu.bench_entry_id
                            where p.style_id is not null),
                        ranked as (
                            select t.*, rank() over (partition by style_id order by doc_date desc, recorded_at desc,
                                                     cast(bench_entry_id as varchar(36)) desc) as latest
                            from touched t)
                        select r.style_id, s.name, r.supply_id, r.typed, r.estimated, r.tool, r.latest
                        from ranked r join style s on s.id = r.style_id
                        where r.latest <= :most
                        order by s.name, r.latest, r.line
                        """).param("most", USES_OF_A_STYLE).query(row -> {
            UUID style = row.getObject("style_id", UUID.class);
            UUID supply = row.getObject("supply_id", UUID.class);
            names.put(style, row.getString("name"));
            order.computeIfAbsent(style, first -> new LinkedHashSet<>()).add(supply);
            if (row.getInt("latest") == 1) {
                last.computeIfAbsent(style, first -> new ArrayList<>())
                        .add(new LastUse(
                                supply,
                                row.getString("typed"),
                                !row.getBoolean("estimated"),
                                row.getBoolean("tool") && row.getString("typed").equals(ToolUse.ONCE)));
            }
        });
        return names.entrySet().stream()
                .map(style -> new StyleRow(
                        style.getKey(),
                        style.getValue(),
                        last.getOrDefault(style.getKey(), List.of()),
                        List.copyOf(order.getOrDefault(style.getKey(), new LinkedHashSet<>()))))
                .toList();
    }

    /** Her own words, the latest entries' first. */
    Words words() {
        List<Said> said =
                jdbc.sql(LATEST_WORDS).param("most", ENTRIES).query(Said.class).list();
        return new Words(of("DONE", said), of("SURFACE", said), of("WHAT", said));
    }

    private static List<String> of(String kind, List<Said> said) {
        return Phrases.of(
                said.stream()
                        .filter(one -> one.kind().equals(kind))
                        .map(Said::words)
                        .toList(),
                WORDS);
    }
}
