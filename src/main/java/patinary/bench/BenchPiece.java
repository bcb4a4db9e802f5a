package patinary.bench;

import jakarta.persistence.Embeddable;
import java.util.UUID;

/**
 * A piece that was worked on.
 *
 * @param pieceId the piece
 * @param ready whether it is finished with this entry
 */
@Embeddable
public record BenchPiece(UUID pieceId, boolean ready) {}
