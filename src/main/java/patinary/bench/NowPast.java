package patinary.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.bench.NowRows.LastUse;
import patinary.bench.NowRows.StyleRow;
import patinary.ledger.DocumentKind;
import patinary.ledger.Readings;
import patinary.supplies.ToolUse;

/** What earlier entries say about the next one: supplies in the order she last used them, and her own words. */
@Repository
@Transactional(readOnly = true)
class NowPast {

    /** As many earlier entries as say how she works now. */
    private static final int ENTRIES = 120;

    private static final int USES_OF_A_STYLE = 40;
    private static final int WORDS = 10;

    /** So long before her last entry is looked: a season comes round in it, and ten years at the bench do not make the page slower. */
    private static final int DAYS = 400;

    /** And at most at so many entries and the others of their first day: of who works that much, they are enough. */
    private static final int MOST = 600;

    private static final String LATELY =
            "d.kind_rank = %d and d.doc_date >= :since".formatted(DocumentKind.BENCH_ENTRY.ordinal());

    /** Asked by itself: within another question H2 seems to ask it again and again while somebody else writes. */
    private static final String SINCE = """
            select greatest(max(l.doc_date) - %2$d, min(l.doc_date))
            from (select doc_date from document where kind_rank = %1$d
                  order by kind_rank desc, doc_date desc
                  fetch first %3$d rows only) l""".formatted(DocumentKind.BENCH_ENTRY.ordinal(), DAYS, MOST);

    /** Words of all three kinds, of each as many as say how she works now, and of each supply what was typed for it last. */
    private static final String LATEST = """
            select kind, words, supply_id from (
                select 'DONE' as kind, e.done as words, cast(null as uuid) as supply_id,
                       row_number() over (order by d.doc_date desc, d.recorded_at desc) as latest
                from bench_entry e join document d on d.id = e.id where e.done <> '' and {lately}
                union all
                select 'SURFACE', m.surface, null, row_number() over (order by d.doc_date desc, d.recorded_at desc)
                from bench_mishap m join document d on d.id = m.bench_entry_id where m.surface <> '' and {lately}
                union all
                select 'WHAT', m.what, null, row_number() over (order by d.doc_date desc, d.recorded_at desc)
                from bench_mishap m join document d on d.id = m.bench_entry_id where m.what <> '' and {lately}
                union all
                select 'USED', used.typed, used.supply_id,
                       row_number() over (order by used.doc_date desc, used.recorded_at desc, used.line)
                from (select bu.supply_id, bu.typed, bu.line, d.doc_date, d.recorded_at,
                             row_number() over (partition by bu.supply_id
                                 order by d.doc_date desc, d.recorded_at desc, bu.line) as of_supply
                      from bench_use bu join document d on d.id = bu.bench_entry_id
                      where {lately}) used
                where used.of_supply = 1) said
            where latest <= :most or kind = 'USED'
            order by latest
            """;

    /**
     * Her own words for what was done, for surfaces and for what went wrong.
     *
     * @param lastUsed what was typed for each supply when it was last used, the last used first
     */
    record Entries(List<String> phrases, List<String> surfaces, List<String> mishaps, Map<UUID, String> lastUsed) {}

    /** All that is asked of the past. */
    record Past(List<StyleRow> styles, Entries entries) {}

    private record Said(String kind, String words, @Nullable UUID supplyId) {}

    private final JdbcClient jdbc;
    private final Readings readings;

    NowPast(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    /** What earlier entries say. */
    Past read() {
        return readings.ahead(
                Past.class,
                () -> since().map(day -> new Past(styles(day), entries(day)))
                        .orElseGet(() -> new Past(List.of(), new Entries(List.of(), List.of(), List.of(), Map.of()))));
    }

    /** From which day on is looked; none where there is no entry yet. */
    private Optional<LocalDate> since() {
        return jdbc.sql(SINCE).query(LocalDate.class).optional();
    }

    private JdbcClient.StatementSpec recent(String question, LocalDate since) {
        return jdbc.sql(question.replace("{lately}", LATELY)).param("since", since);
    }

    /** The styles on whose pieces supplies were used lately. */
    private List<StyleRow> styles(LocalDate since) {
        Map<UUID, String> names = new LinkedHashMap<>();
        Map<UUID, List<LastUse>> last = new LinkedHashMap<>();
        Map<UUID, LinkedHashSet<UUID>> order = new LinkedHashMap<>();
        recent("""
                        with touched as (
                            select distinct p.style_id, bu.bench_entry_id, bu.line, bu.supply_id, bu.typed, bu.estimated,
                                   bu.tool_uses is not null as tool, d.doc_date, d.recorded_at
                            from bench_use bu
                            join bench_use_piece up on up.bench_entry_id = bu.bench_entry_id and up.line = bu.line
                            join piece p on p.id = up.piece_id
                            join document d on d.id = bu.bench_entry_id
                            where p.style_id is not null and {lately}),
                        ranked as (
                            select t.*, rank() over (partition by style_id order by doc_date desc, recorded_at desc,
                                                     cast(bench_entry_id as varchar(36)) desc) as latest
                            from touched t)
                        select r.style_id, s.name, r.supply_id, r.typed, r.estimated, r.tool, r.latest
                        from ranked r join style s on s.id = r.style_id
                        where r.latest <= :most
                        order by s.name, r.latest, r.line
                        """, since).param("most", USES_OF_A_STYLE).query(row -> {
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

    /** What earlier entries say, the latest first. */
    private Entries entries(LocalDate since) {
        List<Said> said =
                recent(LATEST, since).param("most", ENTRIES).query(Said.class).list();
        Map<UUID, String> used = new LinkedHashMap<>();
        said.forEach(one -> Optional.ofNullable(one.supplyId()).ifPresent(supply -> used.put(supply, one.words())));
        return new Entries(of("DONE", said), of("SURFACE", said), of("WHAT", said), used);
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
