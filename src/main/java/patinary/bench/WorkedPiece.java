package patinary.bench;

import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece as the bench sees it.
 *
 * @param area surface in square centimetres
 * @param state where it stands: a word of the view piece_state
 */
record WorkedPiece(
        UUID id,
        String code,
        String title,
        String material,
        @Nullable String kind,
        @Nullable BigDecimal area,
        String state) {

    String name() {
        return code + " " + title;
    }
}
