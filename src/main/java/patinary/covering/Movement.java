package patinary.covering;

import java.time.LocalDate;
import java.util.Collection;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What one document did to a channel's balance, in minor units: a sale less its fee, a refund, postage paid from it.
 *
 * @param saleId the sale, of a sale, refund or payment
 * @param buyer who, where it is known
 * @param orderReference the channel's own number
 */
record Movement(
        UUID documentId,
        LocalDate docDate,
        String kind,
        @Nullable UUID saleId,
        String buyer,
        String orderReference,
        long amountMinor) {

    static Amount sum(Collection<Movement> movements) {
        return Amount.of(movements.stream().mapToLong(Movement::amountMinor).sum());
    }
}
