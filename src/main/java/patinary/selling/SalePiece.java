package patinary.selling;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;

/**
 * A piece sold with a line, with its weight in the line's price.
 *
 * @param line the line's order on the sale
 * @param pieceId the piece
 * @param weight zero or more
 */
@Embeddable
public record SalePiece(int line, UUID pieceId, BigDecimal weight) {}
