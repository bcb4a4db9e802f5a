package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.RoundingMode;
import java.time.LocalDate;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What a channel keeps of a sale from a day on.
 *
 * @param validFrom the first day it holds for
 * @param percent of the price after discounts and the shipping charged
 * @param fixed per sale
 */
@Embeddable
public record FeeRule(
        LocalDate validFrom,
        Percent percent,
        @Column(name = "fixed_minor") Amount fixed) {

    /** The fee on a sale, rounded half up once. */
    public Amount on(Amount priceAndShipping) {
        return percent.of(priceAndShipping, RoundingMode.HALF_UP).plus(fixed);
    }
}
