package patinary.pieces;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What a sold piece brought. All amounts are without tax; docs/handbook/cost-card.md defines each and works one through.
 *
 * @param price after its share of discounts
 * @param shipping that the buyer paid
 * @param refunds given back
 * @param fees of the channel, net of fees returned
 * @param postage out and back, with packing paid for
 * @param packaging its share of the supplies the sale was packed in
 * @param cost landed cost that did not come back
 */
record Earnings(
        Amount price, Amount shipping, Amount refunds, Amount fees, Amount postage, Amount packaging, Amount cost) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal MINUTES_OF_AN_HOUR = BigDecimal.valueOf(60);

    public Amount netSales() {
        return price.plus(shipping).minus(refunds);
    }

    public Amount profit() {
        return netSales().minus(fees).minus(postage).minus(packaging).minus(cost);
    }

    /** Profit in hundredths of net sales, to one decimal; nothing where there are no net sales. */
    Optional<Percent> margin() {
        return inHundredthsOf(netSales());
    }

    /** Profit in hundredths of the landed cost, to one decimal; nothing where the piece cost nothing. */
    Optional<Percent> returnOnCost() {
        return inHundredthsOf(cost);
    }

    /** Profit for each hour at the bench, rounded half up; nothing where no minutes were noted. */
    Optional<Amount> perHour(BigDecimal minutes) {
        return minutes.signum() <= 0
                ? Optional.empty()
                : Optional.of(profit().part(MINUTES_OF_AN_HOUR, minutes, RoundingMode.HALF_UP));
    }

    private Optional<Percent> inHundredthsOf(Amount base) {
        if (!base.isPositive()) {
            return Optional.empty();
        }
        BigDecimal share = BigDecimal.valueOf(profit().minor())
                .multiply(HUNDRED)
                .divide(BigDecimal.valueOf(base.minor()), 1, RoundingMode.HALF_UP);
        return Optional.of(new Percent(share));
    }
}
