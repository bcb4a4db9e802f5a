package patinary.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.bench.NowRows.CautionRow;
import patinary.bench.NowRows.PieceRow;
import patinary.bench.NowRows.SupplyRow;
import patinary.bench.NowRows.WordsRow;
import patinary.measure.Dimension;
import patinary.measure.Unit;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.SupplyMeasures;
import patinary.supplies.ToolUse;
import patinary.web.Ids;
import patinary.web.Words;

/** What the bench page offers to choose from. */
@Component
class NowChoices {

    /** Which pieces, by where they stand, and then what is shown of these few and of the chosen ones. */
    private static final String PIECES = """
            select p.id, p.code, p.title, p.material, coalesce(k.name, '') as kind,
                   coalesce(cast(p.style_id as varchar(36)), '') as style, st.state,
                   coalesce(p.area_cm2, k.area_cm2) as area,
                   coalesce(cast(p.planned_finish_id as varchar(36)), '') as finish
            from (select id from piece where id in (:chosen)
                  union
                  select * from (select st.piece_id from piece_state st %1$s
                                 where st.state in ('BENCH', 'FOUND', 'READY', :more) and st.piece_id not in (:chosen)
                                 order by %2$s, coalesce(st.since, date '1970-01-01') desc, st.piece_id
                                 fetch first :most rows only) latest) found
            join piece p on p.id = found.id
            join piece_state st on st.piece_id = p.id
            left join object_kind k on k.id = p.kind_id
            order by case when p.id in (:chosen) then 0 else %2$s end, coalesce(st.since, date '1970-01-01') desc, p.code desc""";

    /** Those on the bench come first, then those found. */
    private static final String STANDING = "case st.state when 'BENCH' then 1 when 'FOUND' then 2 else 3 end";

    private static final String CALLED = "join piece c on c.id = st.piece_id and " + Words.in("c.code", "c.title");

    private final JdbcClient jdbc;
    private final Cautions cautions;
    private final MessageSource messages;

    NowChoices(JdbcClient jdbc, Cautions cautions, MessageSource messages) {
        this.jdbc = jdbc;
        this.cautions = cautions;
        this.messages = messages;
    }

    private record Found(
            UUID id,
            String code,
            String title,
            String material,
            String kind,
            String style,
            String state,
            @Nullable BigDecimal area,
            String finish) {}

    /**
     * The chosen pieces, then those on the bench, found and ready; of each the latest first.
     *
     * @param words of code or title; with some, pieces on offer are found too
     */
    List<PieceRow> pieces(String words, Collection<UUID> chosen, int most) {
        return jdbc
                .sql(PIECES.formatted(words.isBlank() ? "" : CALLED, STANDING))
                .param("chosen", Ids.orNone(chosen))
                .param("more", words.isBlank() ? "READY" : "OFFERED")
                .param("words", Words.anywhere(words))
                .param("most", most)
                .query(Found.class)
                .list()
                .stream()
                .map(this::row)
                .toList();
    }

    /**
     * All supplies, the last used first, the never used by name.
     *
     * @param last what was typed for each when it was last used, the last used first
     */
    List<SupplyRow> supplies(List<SupplyCatalog.Known> known, Map<UUID, String> last) {
        List<UUID> order = List.copyOf(last.keySet());
        return known.stream()
                .map(supply -> row(supply, last.getOrDefault(supply.id(), "")))
                .sorted(Comparator.comparingInt(
                        row -> order.contains(row.value()) ? order.indexOf(row.value()) : order.size()))
                .toList();
    }

    /** Those first that were last used on pieces of these styles; the rest as they stand. */
    static List<SupplyRow> inOrderOf(List<SupplyRow> supplies, Stream<UUID> first) {
        LinkedHashSet<UUID> order = new LinkedHashSet<>(first.toList());
        List<SupplyRow> sorted = new ArrayList<>();
        for (UUID supply : order) {
            supplies.stream().filter(row -> row.value().equals(supply)).forEach(sorted::add);
        }
        supplies.stream().filter(row -> !order.contains(row.value())).forEach(sorted::add);
        return sorted;
    }

    List<WordsRow> phrases(List<String> phrases) {
        return phrases.stream()
                .map(phrase -> new WordsRow(phrase, called(List.of(phrase))))
                .toList();
    }

    /** The texts of these cautions, the most serious first. */
    List<CautionRow> cautions(Collection<String> ids) {
        return cautions.all().stream()
                .filter(caution -> ids.contains(caution.id()))
                .sorted(Comparator.comparing(Caution::severity))
                .map(caution -> CautionRow.of(caution, about(caution)))
                .toList();
    }

    private String about(Caution caution) {
        return messages.getMessage("bench.caution.about." + caution.family(), null, LocaleContextHolder.getLocale());
    }

    private PieceRow row(Found piece) {
        return new PieceRow(
                piece.id(),
                piece.code() + " " + piece.title(),
                piece.code(),
                piece.title(),
                piece.state(),
                piece.style(),
                piece.area() == null ? "" : piece.area().stripTrailingZeros().toPlainString(),
                piece.finish(),
                called(List.of(piece.title(), piece.material(), piece.kind())));
    }

    private SupplyRow row(SupplyCatalog.Known supply, String last) {
        Supply.Facts facts = supply.facts();
        return new SupplyRow(
                supply.id(),
                supply.title(),
                facts.name(),
                supply.line().name(),
                facts.dimension() == Dimension.COUNT
                        ? ""
                        : Unit.base(facts.dimension()).code(),
                SupplyMeasures.named(facts).stream()
                        .map(Supply.Named::name)
                        .distinct()
                        .toList(),
                last,
                ToolUse.size(facts)
                        .map(size -> size.stripTrailingZeros().toPlainString())
                        .orElse(""),
                called(List.of(facts.name(), supply.line().name())));
    }

    private List<String> called(List<String> words) {
        return cautions.about(words).stream().map(Caution::id).toList();
    }
}
