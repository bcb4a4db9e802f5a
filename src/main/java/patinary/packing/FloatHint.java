package patinary.packing;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import patinary.money.Amount;

/**
 * How much change to take along: what the five buyers need back who are owed most, when each buys one piece and pays
 * with notes of twenty. Common practice, no source; a hint and no more.
 */
final class FloatHint {

    private static final int BUYERS = 5;
    private static final long NOTE = 2000;
    private static final int DIGITS = 2;

    private FloatHint() {}

    /**
     * The hint.
     *
     * @param prices asked, in minor units
     * @param digits of the currency; where it has not two, notes of twenty mean nothing and there is no hint
     */
    static Optional<Amount> of(Collection<Long> prices, int digits) {
        if (digits != DIGITS) {
            return Optional.empty();
        }
        long change = prices.stream()
                .map(price -> Math.floorMod(-price, NOTE))
                .sorted(Comparator.reverseOrder())
                .limit(BUYERS)
                .mapToLong(Long::longValue)
                .sum();
        return change == 0 ? Optional.empty() : Optional.of(Amount.of(change));
    }
}
