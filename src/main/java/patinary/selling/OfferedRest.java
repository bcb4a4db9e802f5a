package patinary.selling;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import patinary.money.Amount;

/**
 * What is left of a set when a piece of it was sold by itself: no longer on offer, and still there.
 *
 * @param codes of the pieces that are left, with spaces between
 * @param weights of them, as the form of an offer takes them
 * @param price their share of the price that was asked for all
 */
record OfferedRest(String codes, String weights, Amount price) {

    /** Nothing is left where all pieces were sold, or are on offer again. */
    static Optional<OfferedRest> of(Offer.Content set, Map<UUID, PieceRef> refs) {
        List<Offer.OfferedPiece> left = set.pieces().stream()
                .filter(piece -> refs.get(piece.pieceId()).isFree())
                .sorted(Comparator.comparing(piece -> refs.get(piece.pieceId()).code()))
                .toList();
        boolean soldAlone = set.pieces().stream()
                .anyMatch(piece -> refs.get(piece.pieceId()).state().equals("SOLD"));
        if (left.isEmpty() || !soldAlone) {
            return Optional.empty();
        }
        Map<UUID, Amount> shares = SetSplit.shares(set);
        Amount price = left.stream().map(piece -> shares.get(piece.pieceId())).collect(Amount.sum());
        String codes =
                left.stream().map(piece -> refs.get(piece.pieceId()).code()).collect(Collectors.joining(" "));
        return Optional.of(new OfferedRest(
                codes,
                Weights.write(left.stream().map(Offer.OfferedPiece::weight).toList()),
                price));
    }
}
