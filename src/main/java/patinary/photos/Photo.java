package patinary.photos;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A photo as its row tells of it.
 *
 * @param subject what it is of
 * @param order where it stands among the photos of the same thing; the first is the thing's picture
 * @param width in pixels, as it is kept, upright
 * @param bytes how large the kept file is
 * @param sha256 of the kept file (FIPS 180-4), in small hexadecimal digits; names the file
 * @param takenOn the day the camera says, where it does
 * @param takenAwayAt since when it is taken away and can still be brought back
 */
record Photo(
        UUID id,
        Subject subject,
        Stage stage,
        int order,
        int width,
        int height,
        int bytes,
        String sha256,
        @Nullable LocalDate takenOn,
        Instant addedAt,
        String addedBy,
        @Nullable Instant takenAwayAt) {

    boolean isAway() {
        return takenAwayAt != null;
    }
}
