package patinary.bench;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Turns a way of sharing into weights, and weights read from a stored entry back into the way. */
final class Weights {

    private Weights() {}

    /** A piece of an entry, with its surface in square centimetres where that is known. */
    record Surface(UUID pieceId, @Nullable BigDecimal area) {}

    /** Every piece the same. */
    static List<UsePiece> equal(int line, List<UUID> pieces) {
        return pieces.stream()
                .map(piece -> new UsePiece(line, piece, BigDecimal.ONE))
                .toList();
    }

    /**
     * Every piece by its surface.
     *
     * @throws IllegalArgumentException where a surface is not known: to guess it would move cost
     */
    static List<UsePiece> byArea(int line, List<Surface> pieces) {
        return pieces.stream().map(piece -> byArea(line, piece)).toList();
    }

    /** Which way of sharing these stored weights came from; one that cannot be told apart reads as the simpler. */
    static ShareMode modeOf(List<UsePiece> parts, Map<UUID, BigDecimal> areas) {
        if (parts.isEmpty()) {
            return ShareMode.NONE;
        }
        if (parts.stream().allMatch(part -> part.weight().compareTo(BigDecimal.ONE) == 0)) {
            return ShareMode.EQUAL;
        }
        boolean byArea = parts.stream().allMatch(part -> {
            BigDecimal area = areas.get(part.pieceId());
            return area != null && area.compareTo(part.weight()) == 0;
        });
        return byArea ? ShareMode.AREA : ShareMode.TYPED;
    }

    private static UsePiece byArea(int line, Surface piece) {
        if (piece.area() == null || piece.area().signum() <= 0) {
            throw new IllegalArgumentException("The surface of piece " + piece.pieceId() + " is not known");
        }
        return new UsePiece(line, piece.pieceId(), piece.area());
    }
}
