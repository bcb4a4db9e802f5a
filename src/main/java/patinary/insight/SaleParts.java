package patinary.insight;

import java.util.stream.Collector;
import patinary.money.Amount;

/**
 * From price to profit: what sales brought and what went off, as docs/handbook/cost-card.md has it.
 *
 * @param price after discounts, without tax
 * @param shipping charged to the buyer
 * @param refunds given back
 * @param fees of the channel
 * @param postage out and back
 * @param packaging what it was packed in
 * @param cost landed cost not returned
 */
record SaleParts(
        Amount price, Amount shipping, Amount refunds, Amount fees, Amount postage, Amount packaging, Amount cost) {

    static final SaleParts NONE =
            new SaleParts(Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO);

    SaleParts plus(SaleParts other) {
        return new SaleParts(
                price.plus(other.price),
                shipping.plus(other.shipping),
                refunds.plus(other.refunds),
                fees.plus(other.fees),
                postage.plus(other.postage),
                packaging.plus(other.packaging),
                cost.plus(other.cost));
    }

    static Collector<SaleParts, ?, SaleParts> sum() {
        return java.util.stream.Collectors.reducing(NONE, SaleParts::plus);
    }

    public Amount net() {
        return price.plus(shipping).minus(refunds);
    }

    public Amount profit() {
        return net().minus(fees).minus(postage).minus(packaging).minus(cost);
    }
}
