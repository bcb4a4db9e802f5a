package patinary.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import patinary.money.Amount;

/**
 * A quantity bought at one cost, given out bit by bit. What a use costs is the difference of the rounded running totals
 * before and after it, so a lot that is used up has given out exactly its cost.
 */
final class Lot {

    private final BigDecimal quantity;
    private final Amount cost;
    private final boolean estimated;
    private BigDecimal taken = BigDecimal.ZERO;

    Lot(BigDecimal quantity, Amount cost, boolean estimated) {
        if (quantity.signum() <= 0) {
            throw new IllegalArgumentException("A lot needs a quantity above zero: " + quantity);
        }
        this.quantity = quantity;
        this.cost = cost;
        this.estimated = estimated;
    }

    static Lot of(Carried.LotLeft carried) {
        Lot lot = new Lot(carried.quantity(), carried.cost(), carried.estimated());
        lot.taken = carried.taken();
        return lot;
    }

    Carried.LotLeft carried() {
        return new Carried.LotLeft(quantity, cost, estimated, taken);
    }

    Amount take(BigDecimal amount) {
        Amount before = given();
        taken = taken.add(amount);
        return given().minus(before);
    }

    BigDecimal left() {
        return quantity.subtract(taken);
    }

    Amount costLeft() {
        return cost.minus(given());
    }

    boolean estimated() {
        return estimated;
    }

    /** The same quantity, bought for so much more. */
    Lot costing(Amount more, boolean moreEstimated) {
        return new Lot(quantity, cost.plus(more), estimated || moreEstimated);
    }

    /** What so much would cost at this lot's own unit cost, whatever is left. */
    Amount priceOf(BigDecimal amount) {
        return cost.part(amount, quantity, RoundingMode.HALF_UP);
    }

    private Amount given() {
        return priceOf(taken);
    }
}
