package patinary.measure;

import java.util.Locale;

/**
 * The maker's own word for an amount she uses by eye, for instance a "dab" of 2 ml. Her words are hers to define; a word
 * that already is a unit cannot be redefined, so that a cup stays a cup.
 *
 * @param name one or more words, not starting with a digit
 * @param quantity what one of it is; above zero
 */
public record NamedMeasure(String name, Quantity quantity) {

    /** @throws IllegalArgumentException where the name is blank, starts with a digit or is a unit; or the quantity is not above zero */
    public NamedMeasure {
        name = NumberText.plain(name);
        if (!isName(name)) {
            throw new IllegalArgumentException(
                    "A measure needs a name that starts with a letter and is no unit: " + name);
        }
        if (quantity.value().signum() <= 0) {
            throw new IllegalArgumentException("A measure is more than nothing: " + quantity);
        }
    }

    /** Whether an amount may be called so: a word that starts with a letter and is no unit. */
    public static boolean isName(String typed) {
        String name = NumberText.plain(typed);
        return !name.isEmpty()
                && !Character.isDigit(name.charAt(0))
                && UnitWords.find(name).isEmpty();
    }

    /** Whether a typed word means this measure: same letters in any case, with or without a plural s. */
    boolean isCalled(String word) {
        return isOneOrMore(name.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
    }

    /** Whether a typed word means this measure where none is called just so: its plural in es, its word in another language. */
    boolean isLikelyCalled(String word) {
        String typed = word.toLowerCase(Locale.ROOT);
        String own = name.toLowerCase(Locale.ROOT);
        return typed.equals(own + "es") || isOneOrMore(MeasureWords.spanish(own), typed);
    }

    private static boolean isOneOrMore(String one, String typed) {
        return typed.equals(one) || typed.equals(one + "s");
    }
}
