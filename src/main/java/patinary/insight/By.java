package patinary.insight;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What pieces are grouped by. */
enum By {
    STYLE(true),
    KIND(true),
    LINE(false),
    /** What it is made of: the surface that was worked on. */
    MATERIAL(true),
    /** Each finish that was done on it. */
    FINISH(false),
    CHANNEL(false),
    /** A third of the first asked prices of the whole shop each. */
    PRICE(true),
    /** The quarter of the year in which it was first on offer, all years together. */
    SEASON(true);

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
