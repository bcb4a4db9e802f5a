package patinary.places;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece, where it is and what is asked for it.
 *
 * @param state the word for where it stands, as the view {@code piece_state} has it
 * @param priceMinor the asked price in minor units, where it is on offer
 * @param offerId the offer that stands, where one does
 * @param saleId the sale, where it is sold
 */
public record PlacedPiece(
        UUID id,
        String code,
        String title,
        String place,
        String state,
        @Nullable Long priceMinor,
        @Nullable UUID offerId,
        @Nullable UUID saleId) {

    /** The key of the word for its state. */
    public String stateKey() {
        return "pieces.state." + state;
    }

    /** Whether it is still in her hands. */
    public boolean isHere() {
        return !state.equals("SOLD") && !state.equals("GONE");
    }

    public boolean isSold() {
        return state.equals("SOLD");
    }
}
