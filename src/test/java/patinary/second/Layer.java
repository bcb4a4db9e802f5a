package patinary.second;

import java.math.BigDecimal;

/** A stretch of stock with one price; it gives out its cost by rounded running totals. */
final class Layer {

    private final BigDecimal quantity;
    private final long cost;
    private BigDecimal taken = BigDecimal.ZERO;

    Layer(BigDecimal quantity, long cost) {
        this.quantity = quantity;
        this.cost = cost;
    }

    BigDecimal left() {
        return quantity.subtract(taken);
    }

    long costLeft() {
        return cost - given();
    }

    long take(BigDecimal more) {
        long before = given();
        taken = taken.add(more);
        return given() - before;
    }

    private long given() {
        return Cents.halfUp(taken.multiply(BigDecimal.valueOf(cost)), quantity);
    }
}
