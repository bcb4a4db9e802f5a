package patinary.listing;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import patinary.bench.TriggerWords;
import patinary.web.Worded;

/**
 * A line of care for whoever buys a piece, as the program brings it.
 *
 * @param to the last day on which it is said; null as long as it is
 * @param always whether it is said of every piece
 * @param cautions the ids of cautions that call it up
 * @param words that call it up, of every language
 * @param said the line in each language
 * @param source who says so
 */
record CareLine(
        String id,
        LocalDate from,
        @Nullable LocalDate to,
        boolean always,
        Set<String> cautions,
        TriggerWords words,
        Worded said,
        String source) {

    /** The line in the language of the page. */
    public String text() {
        return said.here();
    }

    /**
     * Whether it is said of something on a day.
     *
     * @param texts what is known of the thing: names, materials, supplies
     * @param about the ids of the cautions that these call up
     */
    boolean isSaid(LocalDate day, Collection<String> texts, Collection<String> about) {
        boolean holds = !day.isBefore(from) && (to == null || !day.isAfter(to));
        return holds && (always || words.in(texts) || about.stream().anyMatch(cautions::contains));
    }
}
