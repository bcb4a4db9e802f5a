package patinary.insight;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the speed of selling is grouped by. */
enum SpeedBy {
    STYLE,
    KIND,
    LINE,
    MATERIAL,
    FINISH,
    /** A third of the first asked prices each. */
    PRICE,
    /** The quarter of the year in which the round began, all years together. */
    SEASON;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a piece belongs to it however it is offered, so that it can be a filter too. */
    boolean ofPieces() {
        return this != PRICE && this != SEASON;
    }

    static Optional<SpeedBy> of(String word) {
        return Arrays.stream(values()).filter(by -> by.word().equals(word)).findFirst();
    }
}
