package patinary.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.supplies.SupplyCatalog;

/** What went wrong so far, and how often. */
@Repository
@Transactional(readOnly = true)
class MishapBook {

    /** Surfaces that everybody meets; her own words come beside them. */
    private static final List<String> USUAL =
            List.of("Bare wood", "Glass", "Laminate", "Metal", "Old paint", "Old varnish", "Plastic", "Tin", "Veneer");

    private static final String RATES = """
            select r.supply_line_id as line_id, l.name as line, r.surface, r.failed, r.tried, r.known
            from mishap_rate r left join supply_line l on l.id = r.supply_line_id""";

    /** One mishap as it was told. */
    record Told(
            UUID entryId,
            LocalDate onDay,
            @Nullable String piece,
            @Nullable String supply,
            String surface,
            String what,
            String preparation,
            @Nullable UUID reworkedIn) {}

    /** An entry that worked on a piece. */
    record Work(UUID id, LocalDate onDay, String done) {

        String name() {
            return done.isBlank()
                    ? onDay.toString()
                    : onDay + ": " + (done.length() > 60 ? done.substring(0, 60) : done);
        }
    }

    /** A combination that failed before, by the pieces and supplies that would be it again. */
    record Again(String value, String text, long failed, long tried, List<UUID> pieces, List<UUID> supplies) {}

    private final JdbcClient jdbc;
    private final Readings readings;

    MishapBook(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    /** Every supply line on every surface on which it failed or was used, those that failed most first. */
    List<MishapRate> rates() {
        return readings.ahead(
                MishapRate.class,
                () -> jdbc.sql(RATES + " order by r.failed desc, r.tried, lower(l.name), r.surface")
                        .query(MishapRate.class)
                        .list());
    }

    /** What failed before among these supplies' lines on these surfaces. */
    List<MishapRate> again(Collection<UUID> supplies, Collection<String> materials) {
        List<String> surfaces = materials.stream()
                .map(material -> material.strip().toLowerCase(Locale.ROOT))
                .filter(material -> !material.isEmpty())
                .distinct()
                .toList();
        if (supplies.isEmpty() || surfaces.isEmpty()) {
            return List.of();
        }
        return jdbc.sql(RATES + "\n" + """
                        where r.failed > 0 and r.surface in (:surfaces)
                           and r.supply_line_id in (select supply_line_id from supply where id in (:supplies))
                         order by r.failed desc, lower(l.name), r.surface""")
                .param("surfaces", surfaces)
                .param("supplies", supplies)
                .query(MishapRate.class)
                .list();
    }

    /**
     * Every combination that failed before, with the pieces still here that it could happen to again. Asked in two
     * plain questions: one that joins the rates and the states of the pieces works both out for every row.
     *
     * @param known all supplies
     * @param shown the pieces that are meant
     */
    List<Again> couldFailAgain(List<SupplyCatalog.Known> known, List<UUID> shown) {
        if (shown.isEmpty()) {
            return List.of();
        }
        List<MishapRate> failed = rates().stream()
                .filter(rate -> rate.failed() > 0)
                .sorted(Comparator.comparing(MishapRate::line, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(MishapRate::surface))
                .toList();
        if (failed.isEmpty()) {
            return List.of();
        }
        Map<String, List<UUID>> pieces =
                piecesHere(failed.stream().map(MishapRate::surface).distinct().toList(), shown);
        Map<UUID, List<UUID>> supplies = known.stream()
                .collect(Collectors.groupingBy(
                        supply -> supply.facts().lineId(),
                        Collectors.mapping(SupplyCatalog.Known::id, Collectors.toList())));
        return failed.stream()
                .filter(each -> pieces.containsKey(each.surface()))
                .map(each -> new Again(
                        each.lineId() + " " + each.surface(),
                        each.line() + ", " + each.surface(),
                        each.failed(),
                        each.tried(),
                        pieces.get(each.surface()),
                        supplies.getOrDefault(each.lineId(), List.of())))
                .toList();
    }

    /** Those of the pieces that are neither sold nor gone, by what they are made of. */
    private Map<String, List<UUID>> piecesHere(List<String> surfaces, List<UUID> shown) {
        Map<String, List<UUID>> pieces = new HashMap<>();
        jdbc.sql("""
                        select p.id, lower(trim(p.material)) as surface
                        from piece_state st
                        left join piece p on p.id = st.piece_id
                        where p.id in (:shown) and st.state not in ('SOLD', 'GONE') and lower(trim(p.material)) in (:surfaces)
                        order by p.code""").param("surfaces", surfaces).param("shown", shown).query(row -> {
            pieces.computeIfAbsent(row.getString("surface"), first -> new ArrayList<>())
                    .add(row.getObject("id", UUID.class));
        });
        return pieces;
    }

    /** Everything that went wrong, the latest first. */
    List<Told> told(int most) {
        return jdbc.sql("""
                        select m.bench_entry_id as entry_id, d.doc_date as on_day, p.code || ' ' || p.title as piece,
                               l.name || ': ' || s.name as supply,
                               case when m.surface <> '' then m.surface else coalesce(p.material, '') end as surface,
                               m.what, m.preparation, m.reworked_in
                        from bench_mishap m
                        join document d on d.id = m.bench_entry_id
                        left join piece p on p.id = m.piece_id
                        left join supply s on s.id = m.supply_id
                        left join supply_line l on l.id = s.supply_line_id
                        order by d.doc_date desc, m.bench_entry_id, m.line
                        fetch first :most rows only""").param("most", most).query(Told.class).list();
    }

    /** Entries that worked on any of these pieces, the latest first, without the one itself. */
    List<Work> worksOn(Collection<UUID> pieces, String but) {
        if (pieces.isEmpty()) {
            return List.of();
        }
        return jdbc.sql("""
                        select distinct e.id, d.doc_date as on_day, e.done
                        from bench_entry e
                        join document d on d.id = e.id
                        join bench_piece bp on bp.bench_entry_id = e.id
                        where bp.piece_id in (:pieces)
                        order by 2 desc, 1""").param("pieces", pieces).query(Work.class).list().stream()
                .filter(work -> !work.id().toString().equals(but))
                .toList();
    }

    /** Her own surfaces and the usual ones, by name, each once. */
    Set<String> surfaces() {
        Set<String> all = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        all.addAll(jdbc.sql("""
                        select distinct surface from bench_mishap where surface <> ''
                        union select distinct material from piece where material <> ''""").query((row, number) -> row.getString(1)).list());
        all.addAll(USUAL);
        return all;
    }
}
