package patinary.insight;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import patinary.web.Choice;

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

    /** Another table: where a piece sold is no group that it belonged to while it waited ({@link SoldWhere}). */
    static final String CHANNEL = "channel";

    /** Within so many days the share sold is told. */
    static final List<Integer> MARKS = List.of(30, 60, 90, 180);

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a piece belongs to it however it is offered, so that it can be a filter too. */
    boolean ofPieces() {
        return this != PRICE && this != SEASON;
    }

    /** What the page may be asked for: these, and where things sold. */
    static List<Choice> choices() {
        return Stream.concat(Arrays.stream(values()).map(SpeedBy::word), Stream.of(CHANNEL))
                .map(word -> Choice.said(word, "insight.speed.by." + word))
                .toList();
    }

    static Optional<SpeedBy> of(String word) {
        return Arrays.stream(values()).filter(by -> by.word().equals(word)).findFirst();
    }
}
