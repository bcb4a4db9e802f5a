package patinary.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import patinary.finishes.Finish;
import patinary.supplies.QuantityWords;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.ToolUse;

/**
 * Writes the supplies of a finish into the form of an entry: as much as the chosen pieces take, judged by eye. What is in
 * the form already stays. Where the surface of a piece is not known, what goes by surface is left to be typed.
 */
final class FinishFilling {

    /** Finer than anybody pours. */
    private static final int SCALE = 2;

    private final Finish finish;
    private final Map<UUID, SupplyCatalog.Known> supplies;
    private final List<WorkedPiece> pieces;

    FinishFilling(Finish finish, List<SupplyCatalog.Known> supplies, List<WorkedPiece> pieces) {
        this.finish = finish;
        this.supplies = supplies.stream().collect(Collectors.toMap(SupplyCatalog.Known::id, Function.identity()));
        this.pieces = pieces;
    }

    void into(BenchForm form) {
        finish.supplies().forEach(supply -> into(form, supply));
    }

    private void into(BenchForm form, UUID supply) {
        Optional<String> uses = toolUses(supply);
        if (uses.filter(ToolUse.ONCE::equals).isPresent()) {
            tick(form, supply.toString());
            return;
        }
        int at = place(form, supply.toString());
        if (at == form.uses.size()) {
            form.uses.add(new BenchForm.UseLine());
        }
        BenchForm.UseLine line = form.uses.get(at);
        if (!line.quantity.isBlank()
                || form instanceof NowForm now && !now.tap(at).measure.isBlank()) {
            return;
        }
        line.supply = supply.toString();
        line.how = "EYE";
        line.share = share(supply).name();
        line.quantity = uses.orElseGet(() -> rounded(supply)
                .map(quantity -> QuantityWords.typed(
                        quantity, supplies.get(supply).facts().dimension()))
                .orElse(""));
        if (form instanceof NowForm now) {
            now.tap(at).picked = true;
        }
    }

    private static void tick(BenchForm form, String tool) {
        boolean typed = form.uses.stream().anyMatch(line -> line.supply.equals(tool) && !line.quantity.isBlank());
        if (!typed && !form.tools.contains(tool)) {
            form.tools.add(tool);
        }
    }

    /** A tool is told by its uses; a rounded part of one would be none, or too much. */
    private Optional<String> toolUses(UUID supply) {
        return Optional.ofNullable(supplies.get(supply))
                .flatMap(known -> ToolUse.size(known.facts()))
                .flatMap(size -> quantity(supply).map(quantity -> ToolUse.uses(quantity, size)))
                .filter(uses -> uses.signum() > 0)
                .map(ToolUse::words);
    }

    private Optional<BigDecimal> rounded(UUID supply) {
        return quantity(supply)
                .map(quantity -> quantity.setScale(SCALE, RoundingMode.HALF_UP))
                .filter(sum -> sum.signum() > 0);
    }

    /** As much as all the pieces take; before any was chosen, as much as one takes where that is known. */
    private Optional<BigDecimal> quantity(UUID supply) {
        List<Optional<BigDecimal>> each = pieces.isEmpty()
                ? List.of(Optional.ofNullable(finish.quantity(supply, null)))
                : pieces.stream()
                        .map(piece -> Optional.ofNullable(finish.quantity(supply, piece.area())))
                        .toList();
        return each.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : Optional.of(each.stream().map(Optional::orElseThrow).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** By surface where the supply goes by it and every surface is known. */
    private ShareMode share(UUID supply) {
        if (pieces.isEmpty()) {
            return ShareMode.NONE;
        }
        boolean byArea = finish.needs().stream()
                .anyMatch(need ->
                        need.supplyId().equals(supply) && need.coverage().goesByArea());
        boolean known = pieces.stream().allMatch(piece -> piece.area() != null);
        return byArea && known ? ShareMode.AREA : ShareMode.EQUAL;
    }

    /** The line of this supply; else an open one; else one more. */
    private static int place(BenchForm form, String supply) {
        int open = -1;
        for (int i = 0; i < form.uses.size(); i++) {
            BenchForm.UseLine line = form.uses.get(i);
            if (line.supply.equals(supply)) {
                return i;
            }
            if (open < 0 && line.isEmpty()) {
                open = i;
            }
        }
        return open < 0 ? form.uses.size() : open;
    }
}
