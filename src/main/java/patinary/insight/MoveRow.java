package patinary.insight;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * One group of pieces in the period.
 *
 * @param name the group; empty for the pieces that have none
 * @param found pieces that came in the period
 * @param onOffer different pieces on offer at any time in the period
 * @param sold different pieces sold in the period that did not come back
 * @param waiting pieces on offer at the end of the period
 * @param medianDays the median of days to sell of the sold pieces, or null where none is known
 * @param daysKnown of how many sold pieces the days are known
 * @param cost landed cost of what was sold
 * @param net net sales
 * @param profit net sales less fees, postage and landed cost
 * @param drawn the sell-through drawn towards the shop's, so that one sold of one is not the best; null for the whole shop,
 *     and where nothing was on offer
 * @param behind the pieces that these figures are made of
 */
record MoveRow(
        String name,
        int found,
        int onOffer,
        int sold,
        int waiting,
        @Nullable BigDecimal medianDays,
        int daysKnown,
        Amount cost,
        Amount net,
        Amount profit,
        @Nullable Estimate drawn,
        Behind behind) {

    /** Fewer on offer than this are too few to say much. */
    static final int FEW = 5;

    static MoveRow of(String name, Behind behind) {
        List<Integer> days = behind.days();
        return new MoveRow(
                name,
                behind.found().size(),
                behind.offered().size(),
                (int) behind.sold(),
                behind.waiting().size(),
                Median.of(days).orElse(null),
                days.size(),
                sum(behind, OfferFacts.Sold::cost),
                sum(behind, OfferFacts.Sold::net),
                sum(behind, OfferFacts.Sold::profit),
                null,
                behind);
    }

    private static Amount sum(Behind behind, ToLongFunction<OfferFacts.Sold> part) {
        return behind.sales().stream()
                .map(sale -> Amount.of(part.applyAsLong(sale.sold())))
                .collect(Amount.sum());
    }

    MoveRow drawn(Estimate towardsAll) {
        return new MoveRow(
                name, found, onOffer, sold, waiting, medianDays, daysKnown, cost, net, profit, towardsAll, behind);
    }

    Tries tries() {
        return new Tries(onOffer, sold);
    }

    public boolean few() {
        return onOffer < FEW;
    }

    /** Sold of those on offer, in percent with one decimal; null where nothing was on offer. */
    public @Nullable Percent sellThrough() {
        return Ratios.percent(sold, onOffer);
    }

    /** Profit of net sales, in percent with one decimal; null where there are no net sales. */
    public @Nullable Percent margin() {
        return Ratios.percent(profit.minor(), net.minor());
    }
}
