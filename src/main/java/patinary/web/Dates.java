package patinary.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Days as an address has them, by ISO 8601: 2026-03-01. */
public final class Dates {

    private Dates() {}

    /** A day that cannot be read was not asked for. */
    public static Optional<LocalDate> read(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
