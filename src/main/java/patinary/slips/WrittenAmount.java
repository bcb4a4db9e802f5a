package patinary.slips;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount at the end of a line, with two decimals after a point or a comma, which is sometimes
 * misread as a colon.
 *
 * @param minor in hundredths, negative where a minus stands before or after it
 * @param before what the line says before it
 */
record WrittenAmount(long minor, String before) {

    private static final Pattern AT_END = Pattern.compile(
            "(?<before>.*?)(?<minus>[-\\u2013\\u2014\\u2212]\\s?)?[$\\u20ac\\u00a3]?\\s?(?<minusTwo>[-\\u2013\\u2014\\u2212])?"
                    + "(?<!\\d)(?<!\\d[.,/])(?<whole>\\d{1,3}(?:[.,']\\d{3})+|\\d{1,6})\\s?[.,:]\\s?(?<cents>\\d{2})"
                    + "\\s?(?<minusAfter>[-\\u2013\\u2014\\u2212])?\\s?(?:[$\\u20ac\\u00a3]|EUR|USD)?(?:\\s[A-Z*])?$");

    static Optional<WrittenAmount> atEnd(String line) {
        Matcher found = AT_END.matcher(line.strip());
        if (!found.matches()) {
            return Optional.empty();
        }
        long whole = Long.parseLong(found.group("whole").replaceAll("\\D", ""));
        long minor = whole * 100 + Long.parseLong(found.group("cents"));
        boolean negative =
                found.group("minus") != null || found.group("minusTwo") != null || found.group("minusAfter") != null;
        return Optional.of(new WrittenAmount(negative ? -minor : minor, tidy(found.group("before"))));
    }

    /** Without the dots that lead the eye to the price. */
    static String tidy(String text) {
        return text.replaceAll("[.\\u2026_\\u00b7]{2,}.*$", "")
                .replaceAll("[\\s.:=_$\\u20ac\\u00a3-]+$", "")
                .strip();
    }
}
