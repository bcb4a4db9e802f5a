package patinary.bench;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Finds the cautions that words call up: the names of supplies, what was done, what a piece is made of.
 *
 * <p>A trigger is found as whole words, whatever their case, also in their usual English endings: sand finds sanded and
 * sanding, strip finds stripped, scrape finds scraping, but oil does not find soil. Rather one caution too many than one
 * too few: lime the color calls up lime the powder, a striped cloth the stripper.
 */
public final class Cautions {

    private static final String ENDINGS = "(?:s|es|ed|ing|ings|er|ers|ren|y)?";

    private record Rule(Caution caution, Pattern pattern) {}

    private final List<Rule> rules;

    private Cautions(List<Rule> rules) {
        this.rules = rules;
    }

    /**
     * Reads the table of cautions: UTF-8, RFC 4180, with a header.
     *
     * @throws IOException where it cannot be read
     * @throws IllegalArgumentException where a row has an unknown severity or a column is missing
     */
    public static Cautions read(Reader table) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(table)) {
            return new Cautions(
                    parser.stream().map(Cautions::caution).map(Cautions::rule).toList());
        }
    }

    /** The cautions that any of these texts calls up, the most serious first, else in the order of the table. */
    public List<Caution> about(Collection<String> texts) {
        return rules.stream()
                .filter(rule -> texts.stream()
                        .anyMatch(text -> rule.pattern().matcher(text).find()))
                .map(Rule::caution)
                .sorted(Comparator.comparing(Caution::severity))
                .toList();
    }

    /** All of them, in the order of the table. */
    List<Caution> all() {
        return rules.stream().map(Rule::caution).toList();
    }

    private static Caution caution(CSVRecord row) {
        return new Caution(
                row.get("id"),
                Caution.Severity.valueOf(row.get("severity")),
                Arrays.stream(row.get("trigger_words").split(";"))
                        .map(String::strip)
                        .filter(word -> !word.isEmpty())
                        .toList(),
                row.get("text"),
                row.get("source"));
    }

    private static Rule rule(Caution caution) {
        String words = caution.triggerWords().stream().map(Cautions::pattern).collect(Collectors.joining("|"));
        // A row without words is called up by nothing, not by everything.
        String any = words.isEmpty() ? "(?!)" : "\\b(?:" + words + ")\\b";
        return new Rule(caution, Pattern.compile(any, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
    }

    private static String pattern(String trigger) {
        String[] words = trigger.toLowerCase(Locale.ROOT).split("[\\s-]+");
        return Arrays.stream(words).map(Cautions::word).collect(Collectors.joining("[\\s-]+"));
    }

    private static String word(String word) {
        String last = word.substring(word.length() - 1);
        if (last.equals("e")) {
            return Pattern.quote(word.substring(0, word.length() - 1)) + "(?:e|es|ed|ing|er|ers)";
        }
        String doubled = Character.isLetter(last.charAt(0)) ? "(?:" + Pattern.quote(last) + "(?=ed|ing|er))?" : "";
        return Pattern.quote(word) + doubled + ENDINGS;
    }
}
