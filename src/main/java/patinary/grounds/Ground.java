package patinary.grounds;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Why an amount deserves a second look. */
enum Ground {
    /** A price that was typed as "about". */
    ABOUT,
    /** Supplies used by eye and not counted since, up to the end of the year. */
    BY_EYE,
    /** A receipt or an expense without a photo of its paper. */
    NO_PAPER,
    /** A receipt without a source, or an expense that does not say to whom it was paid. */
    NO_PAYEE;

    /** The end of its message keys and what its address calls it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Ground> ofKey(String key) {
        return Stream.of(values()).filter(one -> one.key().equals(key)).findFirst();
    }
}
