package patinary.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;

/**
 * A rate in hundredths, for instance 8.25 for a tax of 8.25 %.
 *
 * @param value the number before the percent sign
 */
public record Percent(BigDecimal value) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public static final Percent ZERO = new Percent(BigDecimal.ZERO);

    public static Percent of(String value) {
        return new Percent(new BigDecimal(value));
    }

    /** How many places after the mark the longest of some rates needs: two for 8.25 beside 7. */
    public static int places(Collection<Percent> rates) {
        return rates.stream()
                .mapToInt(rate -> Math.max(0, rate.value().stripTrailingZeros().scale()))
                .max()
                .orElse(0);
    }

    /** This percentage of an amount, rounded once, as named. */
    public Amount of(Amount base, RoundingMode rounding) {
        return base.part(value, HUNDRED, rounding);
    }
}
