package patinary.covering;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * A payout as it is recorded, in minor units.
 *
 * @param totalMinor what the movements that it covers came to when she said so, or null where she has not
 */
record PayoutFacts(
        UUID id,
        LocalDate docDate,
        UUID placeId,
        String place,
        String toPlace,
        long amountMinor,
        long feeMinor,
        @Nullable LocalDate saidOn,
        @Nullable Long totalMinor) {

    /** What left the balance. */
    public Amount out() {
        return Amount.of(amountMinor + feeMinor);
    }
}
