package patinary.selling;

import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What the owner of a piece gets once it is sold: a part of its price, or a fixed amount.
 *
 * @param percent of the price after discounts, without shipping and tax; null where the amount is fixed
 * @param fixed null where it is a percent
 */
public record OwnerTerms(
        @Nullable Percent percent, @Nullable Amount fixed) {

    /** The share of a price; a percent is rounded half up. */
    public Amount of(Amount price) {
        if (percent != null) {
            return percent.of(price, RoundingMode.HALF_UP);
        }
        return fixed == null ? Amount.ZERO : fixed;
    }
}
