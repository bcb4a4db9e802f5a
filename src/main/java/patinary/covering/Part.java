package patinary.covering;

import java.util.UUID;
import patinary.money.Amount;

/**
 * A movement that a payout covers.
 *
 * @param movement as the books have it now; of nothing where it no longer touches the balance
 * @param saidMinor what it came to when she said so
 */
record Part(UUID payoutId, Movement movement, long saidMinor) {

    /** Whether it is another amount by now. */
    public boolean isChanged() {
        return movement.amountMinor() != saidMinor;
    }

    public Amount said() {
        return Amount.of(saidMinor);
    }
}
