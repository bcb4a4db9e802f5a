package patinary.exchange;

import java.util.List;

/**
 * Something in an archive that cannot be taken in.
 *
 * @param file the file, or the archive's own name
 * @param line the line in the file, from 1 for the header; 0 where it is about the whole file
 * @param column the column's name, or empty
 * @param value what stands there, shortened
 * @param message the key of the message that says why
 * @param arguments for the message
 */
public record ArchiveError(
        String file, long line, String column, String value, String message, List<String> arguments) {

    private static final int SHOWN = 60;

    static ArchiveError of(String file, long line, String column, String value, String reason, String... arguments) {
        String shown = value.length() > SHOWN ? value.substring(0, SHOWN) + "…" : value;
        return new ArchiveError(file, line, column, shown, "exchange.error." + reason, List.of(arguments));
    }

    static ArchiveError ofFile(String file, String reason, String... arguments) {
        return of(file, 0, "", "", reason, arguments);
    }
}
