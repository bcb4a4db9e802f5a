package patinary.selling;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something that can be handed over at the stall: an offer with all its pieces, or a finished piece that is on no offer.
 *
 * @param offer the offer, or null for a piece without one
 * @param codes the codes of the pieces, in order
 * @param priceMinor the price asked now, or null without an offer
 */
record Ware(
        @Nullable UUID offer,
        String title,
        List<String> codes,
        List<UUID> pieces,
        @Nullable Long priceMinor) {

    public String code() {
        return String.join(" ", codes);
    }

    boolean has(UUID piece) {
        return pieces.contains(piece);
    }

    boolean matches(String words) {
        return (code() + " " + title)
                .toLowerCase(Locale.ROOT)
                .contains(words.strip().toLowerCase(Locale.ROOT));
    }
}
