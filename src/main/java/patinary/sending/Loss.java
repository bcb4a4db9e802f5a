package patinary.sending;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What went wrong in the mail with a sale, and how the claim stands.
 *
 * @param claimedMinor what was claimed of the carrier; null where nothing was
 * @param refusedOn the day the carrier said no
 * @param incomeId the document of what the carrier paid
 * @param paidOn its day
 * @param paidMinor its amount
 * @param refundMinor what the buyer of the sale was given back in all, tax included
 */
record Loss(
        UUID id,
        UUID saleId,
        What what,
        LocalDate noticedOn,
        String words,
        @Nullable LocalDate claimedOn,
        @Nullable Long claimedMinor,
        String reference,
        @Nullable LocalDate refusedOn,
        @Nullable UUID incomeId,
        @Nullable LocalDate paidOn,
        @Nullable Long paidMinor,
        long refundMinor,
        String buyer,
        String orderReference,
        LocalDate soldOn,
        long version) {

    /** What became of the parcel. */
    enum What {
        LOST,
        DAMAGED
    }

    /** How a claim stands; it follows from what is known of it. */
    enum Claim {
        NONE,
        OPEN,
        PAID,
        REFUSED
    }

    public Claim claim() {
        if (incomeId != null) {
            return Claim.PAID;
        }
        if (refusedOn != null) {
            return Claim.REFUSED;
        }
        return claimedOn == null ? Claim.NONE : Claim.OPEN;
    }
}
