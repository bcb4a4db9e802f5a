package patinary.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of a whole, as typed: {@code 1/3} or {@code 25%}. Kept as two numbers, so that three thirds are a whole.
 *
 * @param part zero or more
 * @param whole zero or more; a part of nothing is refused where it is read
 */
record Fraction(BigDecimal part, BigDecimal whole) {

    private static final int SCALE = 14;
    private static final Pattern PARTS = Pattern.compile("([0-9]{1,6}) ?/ ?([0-9]{1,6})");
    private static final Pattern PERCENT = Pattern.compile("([0-9]{1,3}(?:[.,][0-9]{1,4})?)[ \u00a0\u202f]?%");

    /** The fraction that a text is, or nothing where it is something else. */
    static Optional<Fraction> read(String text) {
        Matcher parts = PARTS.matcher(text.strip());
        if (parts.matches()) {
            return Optional.of(new Fraction(new BigDecimal(parts.group(1)), new BigDecimal(parts.group(2))))
                    .filter(fraction -> fraction.whole.signum() > 0);
        }
        Matcher percent = PERCENT.matcher(text.strip());
        return percent.matches()
                ? Optional.of(new Fraction(new BigDecimal(percent.group(1).replace(',', '.')), BigDecimal.valueOf(100)))
                : Optional.empty();
    }

    /** Whether it is more than nothing and no more than all. */
    boolean isPart() {
        return part.signum() > 0 && part.compareTo(whole) <= 0;
    }

    /** So much of a quantity, rounded half up at 14 decimals. */
    BigDecimal of(BigDecimal quantity) {
        return quantity.multiply(part).divide(whole, SCALE, RoundingMode.HALF_UP);
    }
}
