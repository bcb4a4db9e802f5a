package patinary.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number as people write quantities: {@code 2}, {@code 0.5}, {@code 0,5}, {@code 1/4}, {@code 1 1/2},
 * {@code 1½}. Never below zero.
 */
final class NumberText {

    /** Decimals kept of a fraction that has no exact decimal, such as a third; rounded half up. */
    static final int FRACTION_SCALE = 14;

    /** A number at the start of a text, for use inside larger patterns. */
    static final String FORM =
            "[0-9]{1,9} [0-9]{1,6}/[0-9]{1,6}|[0-9]{1,6}/[0-9]{1,6}|[0-9]{1,9}(?:[.,][0-9]{1,9})?|[.,][0-9]{1,9}";

    private static final Pattern FRACTION = Pattern.compile("(?:([0-9]+) )?([0-9]+)/([0-9]+)");

    private static final Pattern TWO_MEANINGS = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

    private NumberText() {}

    /** Unifies spaces, fraction signs (½ becomes 1/2) and the multiplication sign before patterns are tried. */
    static String plain(String text) {
        String spaced = text.replaceAll("([0-9])([\u00bc-\u00be\u2150-\u215e])", "$1 $2");
        return Normalizer.normalize(spaced.replace("\u00b2", "2"), Normalizer.Form.NFKC)
                .replace('\u2044', '/')
                .replace('\u00d7', 'x')
                .replaceAll("\\s*/\\s*", "/")
                .replaceAll("\\s+", " ")
                .strip();
    }

    static BigDecimal read(String number) {
        if (TWO_MEANINGS.matcher(number).matches()) {
            throw new UnreadableQuantity("measure.error.ambiguous", number);
        }
        Matcher fraction = FRACTION.matcher(number);
        if (!fraction.matches()) {
            return new BigDecimal(number.replace(',', '.'));
        }
        BigDecimal whole = fraction.group(1) == null ? BigDecimal.ZERO : new BigDecimal(fraction.group(1));
        return whole.add(divide(new BigDecimal(fraction.group(2)), new BigDecimal(fraction.group(3)), number));
    }

    private static BigDecimal divide(BigDecimal numerator, BigDecimal denominator, String text) {
        if (denominator.signum() == 0) {
            throw new UnreadableQuantity("measure.error.zeroDenominator", text);
        }
        try {
            return numerator.divide(denominator);
        } catch (ArithmeticException withoutEnd) {
            return numerator.divide(denominator, FRACTION_SCALE, RoundingMode.HALF_UP);
        }
    }
}
