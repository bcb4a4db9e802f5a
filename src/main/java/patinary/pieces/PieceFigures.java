package patinary.pieces;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** A row of the view of the same name, with the state beside it; amounts in minor units. */
record PieceFigures(
        PieceState state,
        @Nullable LocalDate since,
        @Nullable Long priceMinor,
        long purchaseMinor,
        long suppliesMinor,
        long regroupedMinor,
        long landedMinor,
        long estimatedMinor,
        long inStockMinor,
        long costMinor,
        BigDecimal minutes,
        long salesMinor,
        long shippingMinor,
        long refundsMinor,
        long feesMinor,
        long postageMinor,
        long packagingMinor,
        boolean uncosted) {

    /** Whether there is or was a sale to speak of. */
    public boolean hasEarned() {
        return state == PieceState.SOLD || salesMinor != 0 || refundsMinor != 0;
    }

    public Earnings earnings() {
        return new Earnings(
                Amount.of(salesMinor),
                Amount.of(shippingMinor),
                Amount.of(refundsMinor),
                Amount.of(feesMinor),
                Amount.of(postageMinor),
                Amount.of(packagingMinor),
                Amount.of(costMinor));
    }
}
