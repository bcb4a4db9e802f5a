package patinary.buying;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;

/**
 * A piece that a line brought, with its weight in the line's cost: equal weights, or what each would be worth.
 *
 * @param line the line's order on the receipt
 * @param pieceId the piece
 * @param weight zero or more
 */
@Embeddable
public record ReceiptPiece(int line, UUID pieceId, BigDecimal weight) {}
