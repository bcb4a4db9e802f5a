package patinary.bench;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;

/**
 * A piece that a pot went on.
 *
 * @param pot the pot's number
 * @param pieceId the piece
 * @param weight zero or more: equal, by area, or typed
 */
@Embeddable
public record PotPiece(@Column(name = "pot") int pot, UUID pieceId, BigDecimal weight) {}
