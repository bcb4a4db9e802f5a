package patinary.web;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads ids that came with an address or a form. */
public final class Ids {

    /** What an id in an address looks like, so that it is never taken for one of the words there. */
    public static final String PATH = "/{id:[0-9a-fA-F]{8}-[0-9a-fA-F-]{27}}";

    private static final UUID NOBODY = new UUID(0, 0);

    private Ids() {}

    /** The ids for an {@code in (…)}, which may not be empty: in place of none, one that nothing has. */
    public static List<UUID> orNone(Collection<UUID> ids) {
        return ids.isEmpty() ? List.of(NOBODY) : List.copyOf(ids);
    }

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
