package patinary.places;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A code as somebody typed or scanned it. Case, spaces, dots and dashes do not matter; a P and leading zeros may be
 * left out; of a scanned address only what stands behind {@code /p/} counts.
 */
public final class CodeText {

    private static final Pattern SHORT = Pattern.compile("P?0*([0-9]{1,8})");
    private static final String PATH = "/p/";
    private static final Pattern BETWEEN = Pattern.compile("[\\s.\\-\u2010-\u2015]+");

    private CodeText() {}

    /** What the text may mean, the likelier first, each {@link #plain}; empty where it means nothing. */
    public static List<String> meanings(String typed) {
        int path = typed.lastIndexOf(PATH);
        String plain = plain(path < 0 ? typed : typed.substring(path + PATH.length()));
        if (plain.isEmpty()) {
            return List.of();
        }
        Matcher number = SHORT.matcher(plain);
        return number.matches()
                ? Stream.of(plain, "P%04d".formatted(Integer.parseInt(number.group(1))))
                        .distinct()
                        .toList()
                : List.of(plain);
    }

    /** Without what does not matter. */
    public static String plain(String code) {
        return BETWEEN.matcher(code.toUpperCase(Locale.ROOT)).replaceAll("");
    }

    /** Several codes, one to a line or with commas between. */
    public static List<String> split(String text) {
        return Stream.of(text.split("[,;\\n\\r]+"))
                .map(String::strip)
                .filter(code -> !code.isEmpty())
                .toList();
    }
}
