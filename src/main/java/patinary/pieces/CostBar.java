package patinary.pieces;

import java.util.ArrayList;
import java.util.List;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * The cost of a piece as one bar, drawn in thousandths of its width. Parts of nothing or less are left out of the
 * picture; the table beside it has them all.
 */
final class CostBar {

    /** A part of the bar: where it begins and how wide it is, in thousandths. */
    record Part(String name, int from, int width, Amount amount) {}

    /** An amount that may become a part. */
    record Slice(String name, Amount amount) {}

    private static final Amount WIDTH = Amount.of(1000);

    private CostBar() {}

    static List<Part> of(List<Slice> slices) {
        List<Slice> seen =
                slices.stream().filter(slice -> slice.amount().isPositive()).toList();
        if (seen.isEmpty()) {
            return List.of();
        }
        List<Amount> widths =
                Shares.byAmount(WIDTH, seen.stream().map(Slice::amount).toList());
        List<Part> parts = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < seen.size(); i++) {
            int width = Math.toIntExact(widths.get(i).minor());
            parts.add(new Part(seen.get(i).name(), from, width, seen.get(i).amount()));
            from += width;
        }
        return parts;
    }
}
