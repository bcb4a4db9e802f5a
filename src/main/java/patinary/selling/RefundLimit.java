package patinary.selling;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * How far a refund of one thing can still go.
 *
 * @param paid what the buyer paid for it, after discounts and without tax
 * @param given what was given back already
 * @param sold how much of a supply was sold, in its base unit; null for a piece
 * @param back how much of it was sent back already, to the shelf or lost
 */
record RefundLimit(Amount paid, Amount given, @Nullable BigDecimal sold, BigDecimal back) {

    /** What may still be given back. */
    public Amount left() {
        return paid.minus(given).max(Amount.ZERO);
    }

    /** How much may still be sent back; nothing for a piece. */
    public BigDecimal leftQuantity() {
        return sold == null ? BigDecimal.ZERO : sold.subtract(back).max(BigDecimal.ZERO);
    }
}
