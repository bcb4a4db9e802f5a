package patinary.buying;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A receipt as read from its form, before new pieces and a new source have their ids.
 *
 * @param content all but the pieces
 * @param newSource the name of a source to be added, or empty
 * @param pieces the pieces that lines bring
 */
record ReceiptDraft(UUID id, long version, ReceiptContent content, String newSource, List<DraftPiece> pieces) {

    /**
     * A piece of a line.
     *
     * @param id its id where the receipt had it before, or where a phone made one for it
     */
    record DraftPiece(
            int line,
            @Nullable UUID id,
            String title,
            @Nullable UUID kindId,
            @Nullable UUID styleId,
            BigDecimal weight) {}

    /** The content with the source and the pieces as stored. */
    ReceiptContent with(@Nullable UUID sourceId, List<ReceiptPiece> stored) {
        return new ReceiptContent(
                content.date(),
                content.note(),
                sourceId,
                content.tripId(),
                content.tillTotal(),
                content.lines(),
                stored,
                content.charges(),
                content.chargeLines(),
                content.payments());
    }
}
