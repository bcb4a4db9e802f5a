package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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

    /** The rule that holds on a day: the latest that has begun; none before the first. */
    static Optional<FeeRule> on(LocalDate day, List<FeeRule> rules) {
        return rules.stream()
                .filter(rule -> !rule.validFrom().isAfter(day))
                .max(Comparator.comparing(FeeRule::validFrom));
    }

    /** The fee on a sale, rounded half up once. */
    public Amount on(Amount priceAndShipping) {
        return percent.of(priceAndShipping, RoundingMode.HALF_UP).plus(fixed);
    }
}
