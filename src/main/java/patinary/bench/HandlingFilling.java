package patinary.bench;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.supplies.QuantityWords;

/** Writes what was cut and mixed into the entry's form. */
final class HandlingFilling {

    private final BenchContent content;
    private final Map<UUID, BigDecimal> areas;

    HandlingFilling(BenchContent content, Map<UUID, BigDecimal> areas) {
        this.content = content;
        this.areas = areas;
    }

    void fill(HandlingForm form) {
        content.handling()
                .cuts()
                .forEach(cut -> content.uses().stream()
                        .filter(use -> use.line() == cut.line())
                        .forEach(use -> form.cuts.add(cut(cut, use))));
        content.handling().pots().forEach(pot -> form.pots.add(pot(pot)));
    }

    private HandlingForm.CutLine cut(SheetCut cut, SupplyUse use) {
        HandlingForm.CutLine line = new HandlingForm.CutLine();
        boolean motif = cut.kind() == SheetCut.Kind.MOTIF;
        line.what = use.supplyId() + (motif ? "|" + cut.motif() : "");
        line.times = cut.howMany() == 1 ? "" : Integer.toString(cut.howMany());
        line.quantity = motif ? "" : use.typed().replaceFirst("^" + cut.howMany() + " times ", "");
        line.how = BenchFilling.how(use);
        BenchFilling.share(
                line,
                content.usePieces().stream()
                        .filter(part -> part.line() == use.line())
                        .toList(),
                content,
                areas);
        return line;
    }

    private HandlingForm.PotLine pot(Pot pot) {
        HandlingForm.PotLine line = new HandlingForm.PotLine();
        line.name = pot.name();
        line.from = pot.pouredFrom() == null ? "" : pot.pouredFrom().toString();
        line.poured = volume(pot.poured());
        line.water = volume(pot.water());
        line.made = volume(pot.made());
        line.rest = volume(pot.rest());
        line.then = (pot.keptAs() == null ? HandlingForm.Then.THROWN : HandlingForm.Then.KEPT).name();
        line.keptAs = (pot.keptAs() == null ? UUID.randomUUID() : pot.keptAs()).toString();
        line.useBy = text(pot.useBy());
        content.handling().potUses().stream()
                .filter(inside -> inside.pot() == pot.number())
                .flatMap(inside -> content.uses().stream().filter(use -> use.line() == inside.line()))
                .forEach(use -> line.inside.add(inside(use)));
        List<UsePiece> parts = content.handling().potPieces().stream()
                .filter(piece -> piece.pot() == pot.number())
                .map(piece -> new UsePiece(pot.number(), piece.pieceId(), piece.weight()))
                .toList();
        BenchFilling.share(line, parts, content, areas);
        return line;
    }

    private static HandlingForm.Inside inside(SupplyUse use) {
        HandlingForm.Inside line = new HandlingForm.Inside();
        line.supply = use.supplyId().toString();
        line.quantity = use.typed();
        line.how = BenchFilling.how(use);
        return line;
    }

    private static String volume(BigDecimal millilitres) {
        return millilitres.signum() == 0 ? "" : QuantityWords.typed(millilitres, Dimension.VOLUME);
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }
}
