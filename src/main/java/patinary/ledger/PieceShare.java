package patinary.ledger;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;

/**
 * A piece's part in something shared over pieces.
 *
 * @param piece the piece
 * @param weight zero or more; shares are in proportion, equal where all are zero
 */
public record PieceShare(UUID piece, BigDecimal weight) {

    /** In the one order in which ties are settled, whatever order a database returned the rows in: by permanent id. */
    public static List<PieceShare> canonical(List<PieceShare> shares) {
        return shares.stream()
                .sorted(Comparator.comparing(share -> share.piece().toString()))
                .toList();
    }

    /** Like shares for all the given pieces. */
    public static List<PieceShare> equal(List<UUID> pieces) {
        return pieces.stream().map(p -> new PieceShare(p, BigDecimal.ONE)).toList();
    }
}
