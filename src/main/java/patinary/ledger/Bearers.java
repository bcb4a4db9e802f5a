package patinary.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * Who bears the cost of what was here: the uses, what a count wrote off, and what is left. A mixed pot needs to know,
 * because its ingredients may get their cost, or another one, after some of the pot was used.
 */
final class Bearers {

    /** What each bears more, or less where negative. */
    record Change(Map<Use, Amount> onUses, Amount onLost, Amount onStock) {}

    private final List<Use> uses = new ArrayList<>();
    private BigDecimal lost = BigDecimal.ZERO;
    private Amount lostCost = Amount.ZERO;
    private Amount pending = Amount.ZERO;
    private boolean pendingEstimated;

    void add(Use use) {
        uses.add(use);
    }

    List<Use> uses() {
        return uses;
    }

    void lose(Stock.Taken taken) {
        lost = lost.add(taken.quantity());
        lostCost = lostCost.plus(taken.cost());
    }

    /** Whether nothing is here, nor ever was, that could bear a cost. */
    boolean isNobody(BigDecimal left) {
        return left.signum() == 0
                && lost.signum() == 0
                && uses.stream().allMatch(use -> use.held().signum() == 0);
    }

    /** Keeps cost for what will come in: the ingredients of a pot are poured before the pot is there. */
    void await(Amount cost, boolean isEstimated) {
        pending = pending.plus(cost);
        pendingEstimated |= isEstimated;
    }

    Amount pending() {
        return pending;
    }

    boolean pendingEstimated() {
        return pendingEstimated;
    }

    /** What waited is on what came in. */
    void taken() {
        pending = Amount.ZERO;
        pendingEstimated = false;
    }

    /** Shares all cost anew, by quantity, and compares: cost that comes in parts ends where it would have at once. */
    Change share(Amount change, BigDecimal left, Amount leftCost) {
        List<BigDecimal> weights = new ArrayList<>(uses.stream().map(Use::held).toList());
        weights.add(lost);
        weights.add(left);
        Amount all = uses.stream().map(Use::charged).collect(Amount.sum()).plus(lostCost);
        List<Amount> shares = Shares.split(all.plus(leftCost).plus(change), weights);
        Map<Use, Amount> onUses = new LinkedHashMap<>();
        for (int i = 0; i < uses.size(); i++) {
            Amount difference = shares.get(i).minus(uses.get(i).charged());
            if (!difference.isZero()) {
                onUses.put(uses.get(i), difference);
            }
        }
        Amount onLost = shares.get(uses.size()).minus(lostCost);
        lostCost = lostCost.plus(onLost);
        return new Change(onUses, onLost, shares.get(uses.size() + 1).minus(leftCost));
    }
}
