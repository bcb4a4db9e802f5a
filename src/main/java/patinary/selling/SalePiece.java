package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * A piece sold with a line, with its weight in the line's price.
 *
 * @param line the line's order on the sale
 * @param pieceId the piece
 * @param weight zero or more
 * @param owner what she owes the piece's owner for it, where it is not her own
 */
@Embeddable
public record SalePiece(
        int line,
        UUID pieceId,
        BigDecimal weight,
        @Column(name = "owner_minor") @Nullable Amount owner) {

    /** A piece of her own. */
    public SalePiece(int line, UUID pieceId, BigDecimal weight) {
        this(line, pieceId, weight, null);
    }

    SalePiece owing(@Nullable Amount share) {
        return new SalePiece(line, pieceId, weight, share);
    }
}
