package patinary.listing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a pattern can leave a blank for. Each is written in braces, in small letters: {@code {title}}. */
enum Blank {
    /** The offer's title. */
    TITLE,
    /** The pieces by title; several where a set is offered. */
    PIECES,
    /** Their codes. */
    CODES,
    /** What kinds of things they are. */
    KIND,
    /** Their styles. */
    STYLE,
    /** What they are made of. */
    MATERIAL,
    /** Their sizes; with the title before each where there are several. */
    SIZE,
    /** Their weights, the same way. */
    WEIGHT,
    /** The finishes done on them. */
    FINISH,
    /** The supplies used on them. */
    SUPPLIES,
    /** Her own words at the pieces for finding them again. */
    TAGS,
    /** What is asked today. */
    PRICE,
    /** The lines of care. */
    CARE;

    /** As it is written in a pattern, without its braces. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Blank> of(String word) {
        return Arrays.stream(values())
                .filter(blank -> blank.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
