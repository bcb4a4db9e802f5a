package patinary.measure;

import java.util.Locale;
import java.util.Map;

/**
 * The words of the two measures that the program names itself, of a tool and of a sheet: kept and reckoned with by their
 * English names, shown and understood in the language of a page as well.
 */
public final class MeasureWords {

    private static final Map<String, String> SPANISH = Map.of("use", "uso", "sheet", "pliego");

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
        int at = typed.lastIndexOf(' ') + 1;
        String word = typed.substring(at);
        boolean several = word.length() > 1 && word.endsWith("s");
        String one = several ? word.substring(0, word.length() - 1) : word;
        String shown = spanish(one);
        return shown.equals(one) ? typed : typed.substring(0, at) + shown + (several ? "s" : "");
    }
}
