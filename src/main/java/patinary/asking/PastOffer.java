package patinary.asking;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An offer of something like it.
 *
 * @param state LIVE, ENDED or SOLD
 * @param days on offer so far, pauses left out
 * @param kindId the kind of all its pieces; null where they differ or have none
 * @param styleId the style of all its pieces; null where they differ or have none
 */
record PastOffer(
        UUID offerId,
        String title,
        String state,
        LocalDate startedOn,
        long days,
        long firstPriceMinor,
        long lastPriceMinor,
        @Nullable UUID kindId,
        @Nullable UUID styleId) {

    boolean sold() {
        return state.equals("SOLD");
    }
}
