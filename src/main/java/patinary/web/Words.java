package patinary.web;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Words typed into a search: found anywhere in a text and whatever their case; signs that mean "anything" to a database mean themselves. */
public final class Words {

    private Words() {}

    /**
     * The condition of a query that the words stand in one of these.
     *
     * @param texts columns or expressions, of the program's own writing; {@link #anywhere} is bound as {@code words}
     */
    public static String in(String... texts) {
        return Arrays.stream(texts).map(Words::in).collect(Collectors.joining(" or ", "(", ")"));
    }

    private static String in(String text) {
        return "lower(" + text + ") like :words escape '!'";
    }

    /** What is bound for the words; nothing typed is found in every text. */
    public static String anywhere(String typed) {
        return "%" + typed.strip().toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
    }
}
