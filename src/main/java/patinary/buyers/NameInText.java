package patinary.buyers;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A name as it may be written in the middle of other words: whole, in any case, with any spaces between its parts. Of Ann
 * nothing is found in Annex. A name of a single letter is found nowhere: it would be found everywhere.
 */
final class NameInText {

    private final Pattern pattern;

    NameInText(String name) {
        String parts = Pattern.quote(name.strip()).replaceAll("\\s+", "\\\\E\\\\s+\\\\Q");
        String whole = name.strip().length() < 2 ? "(?!)" : "(?<![\\p{L}\\p{N}])" + parts + "(?![\\p{L}\\p{N}])";
        pattern = Pattern.compile(whole, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    boolean isIn(String text) {
        return pattern.matcher(text).find();
    }

    /** The text with something else wherever the name stood. */
    String replaced(String text, String by) {
        return pattern.matcher(text).replaceAll(Matcher.quoteReplacement(by));
    }
}
