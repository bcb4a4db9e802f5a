package patinary.bench;

import jakarta.persistence.Embeddable;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A finish that failed.
 *
 * @param line order on the entry, from 1
 * @param pieceId on which piece
 * @param supplyId with which supply
 * @param surface on what surface; empty for what the piece is made of
 * @param what what happened
 * @param preparation how the surface had been made ready
 * @param reworkedIn the later entry in which it was done again
 */
@Embeddable
public record Mishap(
        int line,
        @Nullable UUID pieceId,
        @Nullable UUID supplyId,
        String surface,
        String what,
        String preparation,
        @Nullable UUID reworkedIn) {}
