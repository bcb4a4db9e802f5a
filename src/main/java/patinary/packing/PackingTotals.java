package patinary.packing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What a packing list adds up to.
 *
 * @param asked asked prices of what is packed and not sold
 * @param soldFor what the sold pieces brought, after discounts, without shipping and tax
 * @param change how much change to take along, where there is a hint
 */
record PackingTotals(
        int pieces,
        int packed,
        int sold,
        int home,
        int out,
        Amount asked,
        Amount soldFor,
        @Nullable Amount change) {

    static PackingTotals of(List<PackedPiece> pieces, int digits) {
        List<Long> asked = pieces.stream()
                .filter(PackedPiece::isOut)
                .map(PackedPiece::priceMinor)
                .filter(Objects::nonNull)
                .toList();
        return new PackingTotals(
                pieces.size(),
                (int) pieces.stream().filter(PackedPiece::packed).count(),
                (int) pieces.stream().filter(PackedPiece::isSold).count(),
                (int) pieces.stream().filter(PackedPiece::home).count(),
                (int) pieces.stream().filter(PackedPiece::isOut).count(),
                Amount.of(asked.stream().mapToLong(Long::longValue).sum()),
                Amount.of(pieces.stream()
                        .filter(PackedPiece::isSold)
                        .map(PackedPiece::soldMinor)
                        .filter(Objects::nonNull)
                        .mapToLong(Long::longValue)
                        .sum()),
                FloatHint.of(asked, digits).orElse(null));
    }
}
