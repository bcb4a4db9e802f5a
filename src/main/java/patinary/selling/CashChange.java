package patinary.selling;

import java.util.Optional;
import patinary.money.Amount;

/**
 * What goes back to the buyer. Exact.
 *
 * @param due what was to be paid
 * @param got what was handed over
 */
record CashChange(Amount due, Amount got) {

    boolean isEnough() {
        return got.compareTo(due) >= 0;
    }

    /** What is given back; nothing where too little was handed over. */
    Optional<Amount> back() {
        return isEnough() ? Optional.of(got.minus(due)) : Optional.empty();
    }
}
