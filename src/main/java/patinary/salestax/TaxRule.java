package patinary.salestax;

import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What a place takes from a day on, as she looked it up.
 *
 * @param validFrom the first day of the rate
 * @param percent the rate on the price after discounts
 * @param shippingTaxed whether shipping that the buyer pays is taxed at the same rate
 */
public record TaxRule(LocalDate validFrom, Percent percent, boolean shippingTaxed) {

    /** The latest rule that has begun on a day; none before the first. */
    static Optional<TaxRule> on(LocalDate day, Collection<TaxRule> rules) {
        return rules.stream()
                .filter(rule -> !rule.validFrom().isAfter(day))
                .max(Comparator.comparing(TaxRule::validFrom));
    }

    /** The tax on a whole sale, rounded half up once; the handbook's page of sales tax names the source. */
    public Amount tax(Amount price, Amount shipping) {
        return percent.of(shippingTaxed ? price.plus(shipping) : price, RoundingMode.HALF_UP);
    }
}
