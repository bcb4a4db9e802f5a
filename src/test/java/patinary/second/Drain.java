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

    Drain(long ord, int line, BigDecimal quantity, boolean byEye) {
        this.ord = ord;
        this.line = line;
        this.quantity = quantity;
        this.waiting = quantity;
        this.byEye = byEye;
    }

    BigDecimal priced() {
        return quantity.subtract(waiting);
    }
}
