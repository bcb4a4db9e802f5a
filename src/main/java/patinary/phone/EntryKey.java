package patinary.phone;

import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The key in the header of an entry: a string of RFC 8941 (in quotation marks), as the draft "The Idempotency-Key HTTP
 * Header Field" asks for. Here it holds the entry's id, a UUID.
 */
final class EntryKey {

    private static final Pattern FORM =
            Pattern.compile("\"([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12})\"");

    private EntryKey() {}

    /** The id in the header, or nothing where the header has another form. */
    static Optional<UUID> read(@Nullable String header) {
        Matcher form = FORM.matcher(header == null ? "" : header.strip());
        return form.matches() ? Optional.of(UUID.fromString(form.group(1))) : Optional.empty();
    }
}
