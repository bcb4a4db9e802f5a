package patinary.money;

import java.math.BigDecimal;
import java.math.RoundingMode;

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

    /** This percentage of an amount, rounded once, as named. */
    public Amount of(Amount base, RoundingMode rounding) {
        return base.part(value, HUNDRED, rounding);
    }
}
