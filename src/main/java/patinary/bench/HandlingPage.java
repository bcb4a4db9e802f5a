package patinary.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.measure.Dimension;
import patinary.mixes.AdditiveCheck;
import patinary.supplies.SupplyCatalog.Known;
import patinary.web.Choice;

/** What the pages of a bench entry show of sheets and pots. */
@Component
class HandlingPage {

    private final JdbcClient jdbc;

    HandlingPage(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A pot for reading.
     *
     * @param inside its ingredients
     * @param keptName the supply that the leftover became, or null
     * @param keptMinor what of the ingredients' cost went with it so far
     */
    record PotRow(
            Pot pot,
            List<SupplyUse> inside,
            List<UUID> pieces,
            @Nullable String keptName,
            long keptMinor,
            List<AdditiveCheck.TooMuch> tooMuch) {}

    /** Without the pots that are used up, unless the form names them. */
    List<Known> usable(List<Known> supplies, BenchForm form) {
        Set<UUID> empty = new HashSet<>(jdbc.sql("""
                        select p.kept_as from bench_pot p
                        where p.kept_as is not null and p.kept_as not in (
                            select m.supply_id from posting m
                            where m.account = 'BENCH'
                              and m.supply_id in (select k.kept_as from bench_pot k where k.kept_as is not null)
                            group by m.supply_id having sum(m.quantity) > 0)
                        """).query(UUID.class).list());
        Set<String> named = named(form);
        return supplies.stream()
                .filter(supply -> !empty.contains(supply.id())
                        || named.contains(supply.id().toString()))
                .toList();
    }

    void fill(Model model, BenchForm form, List<Known> supplies) {
        List<Choice> sheets = new ArrayList<>();
        supplies.stream()
                .filter(supply -> supply.facts().dimension() == Dimension.AREA)
                .forEach(supply -> {
                    String id = supply.id().toString();
                    sheets.add(Choice.named(id, supply.title()));
                    supply.facts()
                            .motifs()
                            .forEach(motif -> sheets.add(Choice.named(
                                    id + "|" + motif.name(),
                                    supply.title() + ": " + motif.name() + ", "
                                            + motif.sides().typed())));
                });
        model.addAttribute("sheets", sheets);
        model.addAttribute(
                "thens",
                Arrays.stream(HandlingForm.Then.values())
                        .map(then -> Choice.said(then.name(), "bench.pot.then." + then.name()))
                        .toList());
        List<List<Choice>> froms = new ArrayList<>();
        for (int i = 0; i < form.handling.pots.size(); i++) {
            froms.add(earlier(form.handling.pots.subList(0, i)));
        }
        model.addAttribute("froms", froms);
    }

    void show(Model model, UUID entry, BenchContent content, List<Known> supplies) {
        Map<UUID, Known> known = supplies.stream().collect(Collectors.toMap(Known::id, Function.identity()));
        Map<UUID, Long> kept = kept(
                entry,
                content.handling().pots().stream()
                        .map(Pot::keptAs)
                        .filter(Objects::nonNull)
                        .toList());
        model.addAttribute(
                "pots",
                content.handling().pots().stream()
                        .map(pot -> row(pot, kept.getOrDefault(pot.keptAs(), 0L), content, known))
                        .toList());
    }

    /** What the ingredients brought into each kept pot, on the entry's own day and later. */
    private Map<UUID, Long> kept(UUID entry, List<UUID> pots) {
        Map<UUID, Long> kept = new HashMap<>();
        if (!pots.isEmpty()) {
            jdbc.sql("""
                            select p.supply_id, cast(sum(p.amount_minor) as bigint) as kept_minor from posting_about p
                            where p.about_id = :entry and p.supply_id in (:pots) and p.account = 'BENCH'
                            group by p.supply_id
                            """).param("pots", pots).param("entry", entry).query(row -> {
                kept.put(row.getObject("supply_id", UUID.class), row.getLong("kept_minor"));
            });
        }
        return kept;
    }

    private static PotRow row(Pot pot, long keptMinor, BenchContent content, Map<UUID, Known> known) {
        List<SupplyUse> inside = content.handling().potUses().stream()
                .filter(one -> one.pot() == pot.number())
                .flatMap(one -> content.uses().stream().filter(use -> use.line() == one.line()))
                .toList();
        List<UUID> pieces = content.handling().potPieces().stream()
                .filter(piece -> piece.pot() == pot.number())
                .map(PotPiece::pieceId)
                .toList();
        String kept = Optional.ofNullable(pot.keptAs())
                .map(known::get)
                .map(Known::title)
                .orElse(null);
        List<AdditiveCheck.TooMuch> tooMuch = inside.stream()
                .flatMap(use -> tooMuch(use, pot.made(), known).stream())
                .toList();
        return new PotRow(pot, inside, pieces, kept, keptMinor, tooMuch);
    }

    private static Optional<AdditiveCheck.TooMuch> tooMuch(SupplyUse use, BigDecimal made, Map<UUID, Known> known) {
        return Optional.ofNullable(known.get(use.supplyId()))
                .flatMap(supply -> AdditiveCheck.of(use.supplyId(), supply.facts(), use.quantity(), made));
    }

    private static List<Choice> earlier(List<HandlingForm.PotLine> lines) {
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String number = Integer.toString(i + 1);
            choices.add(Choice.named(number, lines.get(i).name.isBlank() ? number : number + " " + lines.get(i).name));
        }
        return choices;
    }

    private static Set<String> named(BenchForm form) {
        Set<String> named = new HashSet<>();
        form.uses.forEach(use -> named.add(use.supply));
        form.mishaps.forEach(mishap -> named.add(mishap.supply));
        form.handling.pots.forEach(pot -> pot.inside.forEach(one -> named.add(one.supply)));
        return named;
    }
}
