package patinary.selling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * All that stands between a price and what remains of it, but the price itself.
 *
 * @param rule what the channel keeps; null where it keeps nothing
 * @param shipping charged to the buyer
 * @param tax the rate of sales tax on the price
 * @param shippingTaxed whether the shipping is taxed too
 * @param outlay what she pays for carriage, packing and all else that a sale takes
 */
public record Terms(@Nullable FeeRule rule, Amount shipping, Percent tax, boolean shippingTaxed, Amount outlay) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What is charged at a price; the tax is rounded half up once. */
    Charged at(Amount price) {
        return new Charged(price, shipping, tax.of(taxed(price), RoundingMode.HALF_UP));
    }

    /** What remains of a price, before what the piece itself cost. */
    public Remains remains(Amount price) {
        Charged charged = at(price);
        Amount fee = rule == null ? Amount.ZERO : rule.fee(charged);
        Amount payment = rule == null ? Amount.ZERO : rule.payment(charged);
        return new Remains(charged, fee, payment, outlay);
    }

    long net(long price) {
        return remains(Amount.of(price)).net().minor();
    }

    /** What would remain if nothing were rounded, and the price need not be whole: straight lines between steps. */
    BigDecimal exactNet(BigDecimal price) {
        BigDecimal kept = rule == null ? BigDecimal.ZERO : exactFee(rule, price).add(exactPayment(rule, price));
        return price.add(number(shipping)).subtract(kept).subtract(number(outlay));
    }

    /** The fee before least and most, not rounded. */
    BigDecimal exactFeeUnbounded(FeeRule of, BigDecimal price) {
        return of.steps().exact(exactBase(of, price)).add(number(of.fixed()));
    }

    BigDecimal exactBase(FeeRule of, BigDecimal price) {
        return switch (of.baseOrUsual()) {
            case PRICE -> price;
            case PRICE_AND_SHIPPING -> price.add(number(shipping));
            case ALL_WITH_TAX -> exactAll(price);
        };
    }

    private BigDecimal exactFee(FeeRule of, BigDecimal price) {
        BigDecimal fee = exactFeeUnbounded(of, price);
        BigDecimal atLeast = of.least() == null ? fee : fee.max(number(of.least()));
        return of.most() == null ? atLeast : atLeast.min(number(of.most()));
    }

    private BigDecimal exactPayment(FeeRule of, BigDecimal price) {
        BigDecimal part =
                of.paymentPercent() == null ? BigDecimal.ZERO : hundredths(of.paymentPercent(), exactAll(price));
        return of.paymentFixed() == null ? part : part.add(number(of.paymentFixed()));
    }

    private BigDecimal exactAll(BigDecimal price) {
        BigDecimal taxed = shippingTaxed ? price.add(number(shipping)) : price;
        return price.add(number(shipping)).add(hundredths(tax, taxed));
    }

    private Amount taxed(Amount price) {
        return shippingTaxed ? price.plus(shipping) : price;
    }

    private static BigDecimal hundredths(Percent percent, BigDecimal of) {
        return of.multiply(percent.value()).divide(HUNDRED);
    }

    private static BigDecimal number(Amount amount) {
        return BigDecimal.valueOf(amount.minor());
    }
}
