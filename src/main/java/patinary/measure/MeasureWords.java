package patinary.measure;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of the two measures that the program names itself, of a tool and of a sheet: kept and reckoned with by their
 * English names, shown and understood in the language of a page as well.
 */
public final class MeasureWords {

    private static final Map<String, String> SPANISH = Map.of("use", "uso", "sheet", "pliego");

    /** One of them alone or after a number; a "large sheet" is a name that its owner gave. */
    private static final Pattern TOLD = Pattern.compile("((?:[0-9][0-9.,/ ]* )?)(use|sheet)(s?)");

    private MeasureWords() {}

    /** The Spanish word of a measure of the program's; any other is its owner's, and stays as she calls it. */
    static String spanish(String name) {
        return SPANISH.getOrDefault(name, name);
    }

    /**
     * A measure, or a quantity told in one, as a page says it: "2.5 uses" is "2.5 usos" on a Spanish one.
     *
     * @param typed as it is kept
     * @param page the language that the page is in
     */
    public static String shown(String typed, Locale page) {
        if (!page.getLanguage().equals("es")) {
            return typed;
        }
        Matcher told = TOLD.matcher(typed);
        return told.matches() ? told.group(1) + spanish(told.group(2)) + told.group(3) : typed;
    }
}
