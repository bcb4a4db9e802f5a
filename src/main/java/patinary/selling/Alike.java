package patinary.selling;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Several like pieces that are put up under one title and price, and sold one by one: an offer for each, which have a
 * group in common. So each piece keeps its own cost, days on offer and sale.
 */
final class Alike {

    /** One of the offers, with the id it is kept under. */
    record One(UUID id, Offer.Content content) {}

    private Alike() {}

    /**
     * An offer for each piece of what was typed as one.
     *
     * @param id of the form; the same form always gives the same ids
     * @param typed with all the pieces
     * @param group that they join, or null for a group of their own; a single piece then stands alone
     */
    static List<One> apart(UUID id, Offer.Content typed, @Nullable UUID group) {
        UUID own = typed.pieces().size() > 1 ? id : null;
        return typed.pieces().stream()
                .map(piece -> new One(idOf(id, piece, typed), alone(typed, piece, group == null ? own : group)))
                .toList();
    }

    /** The first keeps the id of the form, which tells whether it came twice. */
    private static UUID idOf(UUID id, Offer.OfferedPiece piece, Offer.Content typed) {
        return piece.equals(typed.pieces().get(0))
                ? id
                : UUID.nameUUIDFromBytes((id + " " + piece.pieceId()).getBytes(StandardCharsets.UTF_8));
    }

    private static Offer.Content alone(Offer.Content typed, Offer.OfferedPiece piece, @Nullable UUID group) {
        return new Offer.Content(
                typed.date(),
                typed.note(),
                typed.title(),
                group,
                null,
                List.of(new Offer.OfferedPiece(piece.pieceId(), BigDecimal.ONE)),
                typed.channels(),
                typed.prices(),
                List.of());
    }
}
