package patinary.asking;

import java.math.RoundingMode;
import java.util.List;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.pieces.TrueCosts;
import patinary.shop.Aims;

/**
 * What must remain of a price: docs/handbook/what-to-ask.md. Common practice, no source.
 *
 * @param landed all the money in what is sold: below it, money is lost
 * @param work her hours at her own rate
 * @param trip the share of the buying trips
 * @param wish the profit she wishes for besides
 */
record Needs(Amount landed, Amount work, Amount trip, Amount wish) {

    /** @param costs one for each piece of the offer; a wished amount is for each of them */
    static Needs of(List<TrueCosts.Cost> costs, Aims aims) {
        Amount landed = sum(costs, TrueCosts.Cost::landed);
        return new Needs(
                landed,
                sum(costs, TrueCosts.Cost::work),
                sum(costs, TrueCosts.Cost::trip),
                wish(landed, costs.size(), aims));
    }

    private static Amount sum(List<TrueCosts.Cost> costs, java.util.function.Function<TrueCosts.Cost, Amount> part) {
        return costs.stream().map(part).collect(Amount.sum());
    }

    /** An amount for each piece, or a share of all the money in them, rounded up. */
    private static Amount wish(Amount landed, int pieces, Aims aims) {
        Percent share = aims.targetReturn();
        return share == null
                ? Amount.of(Math.multiplyExact(aims.target().minor(), pieces))
                : share.of(landed, RoundingMode.CEILING).max(Amount.ZERO);
    }

    /** What keeps the money whole. */
    public Amount floor() {
        return landed;
    }

    /** What pays for her hours and the way too. */
    public Amount trueFloor() {
        return landed.plus(work).plus(trip);
    }

    public Amount target() {
        return trueFloor().plus(wish);
    }
}
