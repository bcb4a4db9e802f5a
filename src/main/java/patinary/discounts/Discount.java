package patinary.discounts;

import java.math.RoundingMode;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What a code takes off, and when.
 *
 * @param code as buyers type it
 * @param percent of the price of all lines, or null where it is an amount
 * @param amount taken off, or null where it is a percentage
 * @param validFrom its first day
 * @param validTo its last day, or null while it has none
 */
public record Discount(
        String code,
        @Nullable Percent percent,
        @Nullable Amount amount,
        LocalDate validFrom,
        @Nullable LocalDate validTo) {

    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(validFrom) && (validTo == null || !day.isAfter(validTo));
    }

    /** What it takes off a price, rounded half up to the minor unit, and never more than the price. */
    public Amount off(Amount price) {
        if (amount != null) {
            return amount.min(price);
        }
        return percent == null ? Amount.ZERO : percent.of(price, RoundingMode.HALF_UP);
    }
}
