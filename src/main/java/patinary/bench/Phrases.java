package patinary.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Finds the turns of phrase that come up again and again in what was written down. */
final class Phrases {

    /** Longer ones are sentences about one day. */
    private static final int LONGEST = 40;

    private Phrases() {}

    /**
     * The phrases between commas, stops and lines, the most frequent first, of equal ones the one that comes first.
     *
     * @param texts the latest first
     */
    static List<String> of(Collection<String> texts, int most) {
        Map<String, List<String>> found = new LinkedHashMap<>();
        for (String text : texts) {
            for (String part : text.split("[,;\\n]|\\.(?:\\s|$)")) {
                String phrase = part.strip();
                if (!phrase.isEmpty() && phrase.length() <= LONGEST) {
                    found.computeIfAbsent(phrase.toLowerCase(Locale.ROOT), first -> new ArrayList<>())
                            .add(phrase);
                }
            }
        }
        return found.values().stream()
                .sorted(Comparator.comparingInt((List<String> same) -> -same.size()))
                .limit(most)
                .map(same -> same.get(0))
                .toList();
    }
}
