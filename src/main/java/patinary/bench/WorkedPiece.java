package patinary.bench;

import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece as the bench sees it.
 *
 * @param area surface in square centimetres: its own, else the usual one of its kind
 * @param finishId the finish it waits for
 * @param state where it stands: a word of the view piece_state
 */
record WorkedPiece(
        UUID id,
        String code,
        String title,
        String material,
        @Nullable String kind,
        @Nullable BigDecimal area,
        @Nullable UUID finishId,
        String state) {

    String name() {
        return code + " " + title;
    }
}
