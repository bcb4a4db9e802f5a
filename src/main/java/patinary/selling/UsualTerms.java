package patinary.selling;

import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What she usually charges and spends for a sale on a channel; zero until she says.
 *
 * @param shipping charged to the buyer
 * @param outlay carriage, packing and all else that she pays for the sale
 * @param tax the rate of sales tax on the price
 * @param shippingTaxed whether the shipping is taxed too
 */
public record UsualTerms(Amount shipping, Amount outlay, Percent tax, boolean shippingTaxed) {

    public static final UsualTerms NONE = new UsualTerms(Amount.ZERO, Amount.ZERO, Percent.ZERO, false);

    /** All that stands between a price and what remains of it, by a rule; without one nothing is kept. */
    public Terms under(@Nullable FeeRule rule) {
        return new Terms(rule, shipping, tax, shippingTaxed, outlay);
    }
}
