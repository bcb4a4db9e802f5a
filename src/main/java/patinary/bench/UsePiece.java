package patinary.bench;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;

/**
 * A piece's part in a use.
 *
 * @param line the use's order on the entry
 * @param pieceId the piece
 * @param weight zero or more: equal, by area, or typed
 */
@Embeddable
public record UsePiece(int line, UUID pieceId, BigDecimal weight) {}
