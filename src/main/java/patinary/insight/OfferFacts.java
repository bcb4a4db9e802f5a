package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;

/**
 * When pieces were on offer and when they sold, as plain rows: all that days on offer are made of.
 *
 * @param spells stretches on offer
 * @param pauses stretches in which an offer paused, by offer
 * @param sold pieces as sold, the earliest first
 */
record OfferFacts(List<Spell> spells, Map<UUID, List<Span>> pauses, List<Sold> sold) {

    /** A piece on offer. */
    record Spell(UUID piece, UUID offer, Span span) {}

    /** A piece on one sale; amounts in minor units, cost is what the sale took out of stock net of what came back. */
    record Sold(UUID piece, LocalDate day, String channel, boolean cameBack, long net, long cost, long profit) {}

    Map<UUID, List<Spell>> spellsByPiece() {
        return byPiece(spells, Spell::piece);
    }

    Map<UUID, List<Sold>> soldByPiece() {
        return byPiece(sold, Sold::piece);
    }

    /** Most pieces have one row. */
    private static <T> Map<UUID, List<T>> byPiece(List<T> rows, Function<T, UUID> piece) {
        Map<UUID, List<T>> byPiece = new HashMap<>();
        for (T row : rows) {
            byPiece.computeIfAbsent(piece.apply(row), one -> new ArrayList<>(1)).add(row);
        }
        return byPiece;
    }
}
