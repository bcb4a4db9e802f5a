package patinary.second;

import java.math.BigDecimal;

/** Something that took from a counted supply: what it drew, what of it still waits for a price, what it cost so far. */
final class Drain {

    final long ord;
    final int line;
    final boolean byEye;
    BigDecimal quantity;
    BigDecimal waiting;
    long cost;

    /** What counts put on it beside what it said itself. */
    BigDecimal more = BigDecimal.ZERO;

    Drain(long ord, int line, BigDecimal quantity, boolean byEye) {
        this.ord = ord;
        this.line = line;
        this.quantity = quantity;
        this.waiting = quantity;
        this.byEye = byEye;
    }

    /** How much of the stock it bears the cost of. */
    BigDecimal held() {
        return priced().add(more);
    }

    BigDecimal priced() {
        return quantity.subtract(waiting);
    }
}
