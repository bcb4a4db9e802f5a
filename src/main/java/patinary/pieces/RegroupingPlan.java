package patinary.pieces;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A joining or splitting as it was typed, before its new pieces exist.
 *
 * @param id of the document, drawn with the form
 * @param from the pieces that go in
 * @param parts what comes out
 */
record RegroupingPlan(UUID id, LocalDate date, String note, List<UUID> from, List<Part> parts) {

    /**
     * A piece that comes out.
     *
     * @param pieceId one of those that went in, or null for a new one
     * @param like whose kind and style a new one gets
     * @param weight its part in the cost that went in
     */
    record Part(@Nullable UUID pieceId, String title, Piece.@Nullable Facts like, BigDecimal weight) {

        Regrouping.Part made(NewPieces pieces) {
            if (pieceId != null) {
                return new Regrouping.Part(pieceId, weight);
            }
            UUID kind = like == null ? null : like.kindId();
            UUID style = like == null ? null : like.styleId();
            return new Regrouping.Part(pieces.create(title, kind, style), weight);
        }
    }

    Regrouping toDocument(NewPieces pieces) {
        return new Regrouping(
                id,
                date,
                note,
                from,
                parts.stream().map(part -> part.made(pieces)).toList());
    }
}
