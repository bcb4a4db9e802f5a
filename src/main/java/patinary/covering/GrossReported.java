package patinary.covering;

import java.time.LocalDate;
import java.util.UUID;
import patinary.money.Amount;

/**
 * The gross that a processor or marketplace reports, as typed.
 *
 * @param placeId the balance through which its payments go
 * @param amountMinor the figure
 * @param withPassedTax whether tax that the channel pays over itself is in it
 */
record GrossReported(
        UUID id,
        UUID placeId,
        String place,
        LocalDate coversFrom,
        LocalDate coversTo,
        long amountMinor,
        boolean withPassedTax,
        String note,
        long version) {

    public Amount amount() {
        return Amount.of(amountMinor);
    }

    boolean holds(LocalDate day) {
        return !day.isBefore(coversFrom) && !day.isAfter(coversTo);
    }
}
