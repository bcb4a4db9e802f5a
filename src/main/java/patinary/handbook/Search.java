package patinary.handbook;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Finds the sections in which all of some words stand, in any order; those whose heading has them come first. */
final class Search {

    private static final int LONGEST = 180;

    private final List<String> words;

    private Search(String query) {
        words = Arrays.stream(plain(query).split("[\\s,;]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** @param extract the line that shows most of the words, cut to what a person reads at a glance */
    record Hit(Leaf.Section section, String extract) {

        public String address() {
            return section.leaf().address() + (section.first() ? "" : "#" + section.id());
        }
    }

    static List<Hit> hits(String query, Collection<Leaf> leaves) {
        Search search = new Search(query);
        return search.words.isEmpty()
                ? List.of()
                : leaves.stream()
                        .flatMap(leaf -> leaf.sections().stream())
                        .filter(section -> search.found(section.title() + " " + String.join(" ", section.lines())))
                        .sorted(Comparator.comparing((Leaf.Section section) -> !search.found(section.title()))
                                .thenComparing(
                                        section -> !search.found(section.leaf().title() + " " + section.title())))
                        .map(section -> new Hit(section, search.extract(section.lines())))
                        .toList();
    }

    /** Small letters, without the accents that many leave out when they type; an ñ is a letter of its own. */
    private static String plain(String text) {
        String marked = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
        return Normalizer.normalize(marked.replaceAll("[\u0301\u0308]", ""), Normalizer.Form.NFC);
    }

    private boolean found(String text) {
        return count(text) == words.size();
    }

    private long count(String text) {
        String small = plain(text);
        return words.stream().filter(small::contains).count();
    }

    private String extract(List<String> lines) {
        // Of equals the first, so that it is the same one every time.
        String best = lines.stream()
                .reduce((one, other) -> count(other) > count(one) ? other : one)
                .orElse("");
        if (best.length() <= LONGEST) {
            return best;
        }
        int at = words.stream()
                .flatMap(word -> Stream.of(plain(best).indexOf(word)))
                .filter(index -> index >= 0)
                .min(Comparator.naturalOrder())
                .orElse(0);
        int from = Math.max(0, Math.min(at - LONGEST / 3, best.length() - LONGEST));
        return (from > 0 ? "… " : "")
                + best.substring(from, from + LONGEST).strip()
                + (from + LONGEST < best.length() ? " …" : "");
    }
}
