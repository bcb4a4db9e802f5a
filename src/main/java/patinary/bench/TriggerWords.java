package patinary.bench;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import patinary.web.Worded;

/**
 * Words that call something up wherever they are said: a caution at the bench, a line of care in an offer's text.
 *
 * <p>They are found as whole words, whatever their case, also in their usual English endings: sand finds sanded and
 * sanding, strip finds stripped, scrape finds scraping, but oil does not find soil. Rather one too many than one too few:
 * lime the color calls up lime the powder, a striped cloth the stripper. Words of another language are found with these
 * endings too, which hold its plurals; its other forms stand in the table one by one.
 */
public final class TriggerWords {

    private static final String ENDINGS = "(?:s|es|ed|ing|ings|er|ers|ren|y)?";

    private final Pattern pattern;

    private TriggerWords(Pattern pattern) {
        this.pattern = pattern;
    }

    /** Words or phrases in a cell of a table, with semicolons between; an empty cell is called up by nothing. */
    public static TriggerWords of(String cell) {
        String words = split(cell).stream().map(TriggerWords::phrase).collect(Collectors.joining("|"));
        String any = words.isEmpty() ? "(?!)" : "\\b(?:" + words + ")\\b";
        return new TriggerWords(Pattern.compile(any, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
    }

    /**
     * The words of a row in one such cell, those of every language: they call up alike, whatever the pages speak, as a supply keeps the
     * name on its jar.
     *
     * @param row the row's cells by the names of their columns
     */
    public static String inEveryLanguage(UnaryOperator<String> row) {
        return String.join(";", Worded.of(row, "trigger_words").texts().values());
    }

    /** The single words of such a cell. */
    static List<String> split(String cell) {
        return Arrays.stream(cell.split(";"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Whether one of them is said in any of these texts. */
    public boolean in(Collection<String> texts) {
        return texts.stream().anyMatch(text -> pattern.matcher(text).find());
    }

    private static String phrase(String trigger) {
        String[] words = trigger.toLowerCase(Locale.ROOT).split("[\\s-]+");
        return Arrays.stream(words).map(TriggerWords::word).collect(Collectors.joining("[\\s-]+"));
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
