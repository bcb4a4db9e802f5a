package patinary.insight;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/** Ratios as pages show them; null where there is nothing to divide by. */
final class Ratios {

    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    private Ratios() {}

    /** A part of a whole above zero, in percent with one decimal, half up. */
    static @Nullable Percent percent(long part, long whole) {
        return whole <= 0
                ? null
                : new Percent(BigDecimal.valueOf(part)
                        .movePointRight(2)
                        .divide(BigDecimal.valueOf(whole), 1, RoundingMode.HALF_UP));
    }

    /** A share between 0 and 1, in percent with one decimal, half up. */
    static Percent percent(double share) {
        return new Percent(BigDecimal.valueOf(share).movePointRight(2).setScale(1, RoundingMode.HALF_UP));
    }

    /** What an hour brought, half up to the smallest unit; null without minutes. */
    static @Nullable Amount perHour(Amount profit, BigDecimal minutes) {
        return minutes.signum() <= 0 ? null : profit.part(HOUR, minutes, RoundingMode.HALF_UP);
    }

    /** What minutes are worth at a rate for the hour, half up to the smallest unit. */
    static Amount worth(BigDecimal minutes, Amount rate) {
        return rate.part(minutes, HOUR, RoundingMode.HALF_UP);
    }

    /** The quotient to 16 digits; null where the lower number is not above zero. */
    static @Nullable BigDecimal quotient(BigDecimal upper, BigDecimal lower) {
        return lower.signum() <= 0 ? null : upper.divide(lower, MathContext.DECIMAL64);
    }

    /** A plain number as shown; null where it is none. */
    static @Nullable BigDecimal twoDecimals(double number) {
        return Double.isFinite(number) ? BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP) : null;
    }

    /** Minutes as pages and files show them, half up. */
    static long wholeMinutes(BigDecimal minutes) {
        return minutes.setScale(0, RoundingMode.HALF_UP).longValueExact();
    }
}
