package patinary.opening;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.pieces.NewPieces;

/**
 * The opening as it was typed, before its new pieces exist.
 *
 * @param content all but the pieces
 * @param pieces the pieces
 */
record OpeningDraft(Opening.Content content, List<Piece> pieces) {

    /**
     * A piece on the shelf.
     *
     * @param id of a piece that exists, or null for a new one
     * @param code its own code, or empty for the next
     */
    record Piece(@Nullable UUID id, String code, String title, Amount cost, boolean known) {

        Opening.OpeningPiece made(NewPieces newPieces) {
            if (id != null) {
                return new Opening.OpeningPiece(id, cost, known);
            }
            UUID fresh =
                    code.isEmpty() ? newPieces.create(title, null, null) : newPieces.create(code, title, null, null);
            return new Opening.OpeningPiece(fresh, cost, known);
        }
    }

    Opening.Content complete(NewPieces newPieces) {
        return new Opening.Content(
                content.date(),
                content.note(),
                content.odometer(),
                content.lastClosing(),
                pieces.stream().map(piece -> piece.made(newPieces)).toList(),
                content.supplies(),
                content.balances());
    }
}
