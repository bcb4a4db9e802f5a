package patinary.web;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads ids that came with an address or a form. */
public final class Ids {

    /** What an id in an address looks like, so that it is never taken for one of the words there. */
    public static final String PATH = "/{id:[0-9a-fA-F]{8}-[0-9a-fA-F-]{27}}";

    private Ids() {}

    /** The id, or nothing where the text is none. */
    public static Optional<UUID> read(@Nullable String text) {
        if (text == null || text.length() != 36) {
            return Optional.empty();
        }
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }
}
