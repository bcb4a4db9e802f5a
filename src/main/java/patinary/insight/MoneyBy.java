package patinary.insight;

import java.util.Arrays;
import java.util.Locale;
import patinary.web.NotFound;

/** What the money of the pieces is grouped by. */
enum MoneyBy {
    STYLE,
    KIND,
    LINE,
    MATERIAL,
    FINISH,
    /** Where it was sold. What is in stock belongs to no channel. */
    CHANNEL,
    /** A third of the first asked prices each. */
    PRICE,
    /** The quarter in which it was first on offer, all years together. */
    SEASON;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a piece belongs to it however it is sold, so that money lying in stock does too. */
    boolean ofPieces() {
        return this != CHANNEL;
    }

    /** @throws NotFound where nothing is grouped so */
    static MoneyBy of(String word) {
        return Arrays.stream(values())
                .filter(by -> by.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new NotFound("group " + word));
    }
}
