package patinary.insight;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What pieces are grouped by. */
enum By {
    STYLE(true),
    KIND(true),
    LINE(false),
    CHANNEL(false);

    private final boolean additive;

    By(boolean additive) {
        this.additive = additive;
    }

    /** Whether a piece stands in exactly one group, so that the groups add up to the shop. */
    boolean additive() {
        return additive;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<By> of(String word) {
        return Arrays.stream(values()).filter(by -> by.word().equals(word)).findFirst();
    }
}
