package patinary.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A text with blanks. Filled line by line:
 *
 * <ul>
 *   <li>a line without a blank stands as it was written;
 *   <li>a line with a blank for which nothing is known is left out;
 *   <li>a line with one blank of several things is written once for each, as in a list;
 *   <li>where a line has more than one blank, several things stand in one row with commas between.
 * </ul>
 *
 * What fills a blank is never read as a pattern. docs/handbook/listing-texts.md has the example.
 */
final class Pattern {

    private static final java.util.regex.Pattern BLANK = java.util.regex.Pattern.compile("\\{([^{}\\n]*)\\}");

    /** A stretch of a line: what is written there, or a blank. */
    private record Part(String text, @Nullable Blank blank) {}

    private final List<List<Part>> lines;

    private Pattern(List<List<Part>> lines) {
        this.lines = lines;
    }

    /** The blanks of a text that nobody knows, as they are written, each once. */
    static List<String> unknown(String text) {
        return BLANK.matcher(text)
                .results()
                .map(found -> found.group(1))
                .filter(word -> Blank.of(word).isEmpty())
                .distinct()
                .toList();
    }

    /**
     * Reads a text.
     *
     * @throws IllegalArgumentException where it has a blank that nobody knows
     */
    static Pattern read(String text) {
        if (!unknown(text).isEmpty()) {
            throw new IllegalArgumentException("Unknown blanks " + unknown(text));
        }
        return new Pattern(
                text.replace("\r\n", "\n").lines().map(Pattern::parts).toList());
    }

    /** @param known what is known for each blank, in order; a blank that is not there is empty */
    String fill(Map<Blank, List<String>> known) {
        return lines.stream().flatMap(line -> filled(line, known)).collect(Collectors.joining("\n"));
    }

    private static List<Part> parts(String line) {
        List<Part> parts = new ArrayList<>();
        int end = 0;
        for (var found : BLANK.matcher(line).results().toList()) {
            parts.add(new Part(line.substring(end, found.start()), null));
            parts.add(new Part("", Blank.of(found.group(1)).orElseThrow()));
            end = found.end();
        }
        parts.add(new Part(line.substring(end), null));
        return parts;
    }

    private static Stream<String> filled(List<Part> line, Map<Blank, List<String>> known) {
        List<Blank> blanks =
                line.stream().map(Part::blank).filter(Objects::nonNull).toList();
        if (blanks.stream()
                .anyMatch(blank -> known.getOrDefault(blank, List.of()).isEmpty())) {
            return Stream.empty();
        }
        if (blanks.size() == 1) {
            return known.get(blanks.get(0)).stream().map(value -> written(line, blank -> value));
        }
        return Stream.of(written(line, blank -> String.join(", ", known.get(blank))));
    }

    private static String written(List<Part> line, java.util.function.Function<Blank, String> value) {
        return line.stream()
                .map(part -> part.blank() == null ? part.text() : value.apply(part.blank()))
                .collect(Collectors.joining());
    }
}
