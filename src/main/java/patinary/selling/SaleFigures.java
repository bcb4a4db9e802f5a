package patinary.selling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What a sale, or one thing on it, earned: docs/handbook/sales.md. All without sales tax.
 *
 * @param price after discounts
 * @param shipping charged to the buyer
 * @param refund given back to the buyer
 * @param fee kept by the channel
 * @param postage carriage out and back, and packing paid for
 * @param packaging cost of the supplies it was packed in
 * @param cost landed cost that did not come back
 * @param minutes at the bench
 */
record SaleFigures(
        Amount price,
        Amount shipping,
        Amount refund,
        Amount fee,
        Amount postage,
        Amount packaging,
        Amount cost,
        BigDecimal minutes) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    static SaleFigures none() {
        Amount zero = Amount.ZERO;
        return new SaleFigures(zero, zero, zero, zero, zero, zero, zero, BigDecimal.ZERO);
    }

    SaleFigures plus(SaleFigures other) {
        return new SaleFigures(
                price.plus(other.price),
                shipping.plus(other.shipping),
                refund.plus(other.refund),
                fee.plus(other.fee),
                postage.plus(other.postage),
                packaging.plus(other.packaging),
                cost.plus(other.cost),
                minutes.add(other.minutes));
    }

    /** Price after discounts + shipping charged − refunds. */
    public Amount net() {
        return price.plus(shipping).minus(refund);
    }

    /** Net sales − fees − postage − packaging − landed cost not returned. */
    public Amount profit() {
        return net().minus(fee).minus(postage).minus(packaging).minus(cost);
    }

    /** Profit in hundredths of net sales, to one decimal, half up; unknown without net sales. */
    public @Nullable Percent margin() {
        return share(net());
    }

    /** Profit in hundredths of landed cost, to one decimal, half up; unknown without cost. */
    public @Nullable Percent returnOnCost() {
        return share(cost);
    }

    /** Profit for each hour at the bench, rounded half up; unknown without hours. */
    public @Nullable Amount perHour() {
        return minutes.signum() == 0 ? null : profit().part(SIXTY, minutes, RoundingMode.HALF_UP);
    }

    private @Nullable Percent share(Amount of) {
        if (!of.isPositive()) {
            return null;
        }
        return new Percent(BigDecimal.valueOf(profit().minor())
                .multiply(HUNDRED)
                .divide(BigDecimal.valueOf(of.minor()), 1, RoundingMode.HALF_UP));
    }
}
