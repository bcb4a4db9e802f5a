package patinary.packing;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece on a packing list.
 *
 * @param place where it is, or where it was before it was packed
 * @param priceMinor the asked price, where it is on offer
 * @param soldMinor what it was sold for, where it is sold and did not come home from this market
 */
record PackedPiece(
        UUID id,
        String code,
        String title,
        String place,
        String state,
        boolean packed,
        boolean home,
        @Nullable Long priceMinor,
        @Nullable Long soldMinor) {

    /** Whether it went along and was sold; follows from the sales alone. */
    public boolean isSold() {
        return packed && !home && state.equals("SOLD");
    }

    /** Whether it went along and is neither sold, let go nor back. */
    public boolean isOut() {
        return packed && !home && !state.equals("SOLD") && !state.equals("GONE");
    }
}
