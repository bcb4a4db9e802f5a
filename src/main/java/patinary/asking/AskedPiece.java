package patinary.asking;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A piece for which a price is sought. */
record AskedPiece(
        UUID id,
        String code,
        String title,
        String state,
        @Nullable UUID kindId,
        @Nullable String kind,
        @Nullable UUID styleId,
        @Nullable String style) {}
