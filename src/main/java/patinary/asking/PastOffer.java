package patinary.asking;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.survival.Exit;

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

    Exit exit() {
        return sold() ? Exit.SOLD : state.equals("ENDED") ? Exit.WITHDRAWN : Exit.OPEN;
    }

    boolean sold() {
        return state.equals("SOLD");
    }
}
