package patinary.ledger;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** What there is of one supply at one place, at cost, by either method. */
final class Stock {

    /** What came out: never more than was there. */
    record Taken(BigDecimal quantity, Amount cost, boolean estimated) {}

    private final StockMethod method;
    private final Deque<Lot> lots = new ArrayDeque<>();
    private @Nullable Lot latest;

    Stock(StockMethod method) {
        this.method = method;
    }

    /** Takes over what was there before. */
    void restore(List<Carried.LotLeft> left, Carried.@Nullable LotLeft bought) {
        left.forEach(lot -> lots.addLast(Lot.of(lot)));
        latest = bought == null ? null : Lot.of(bought);
    }

    List<Carried.LotLeft> carried() {
        return lots.stream().map(Lot::carried).toList();
    }

    Carried.@Nullable LotLeft carriedLatest() {
        return latest == null ? null : latest.carried();
    }

    void bring(BigDecimal quantity, Amount cost, boolean estimated) {
        latest = new Lot(quantity, cost, estimated);
        add(quantity, cost, estimated);
    }

    /** Adds what nobody bought; its cost is itself rounded from a price, so it sets none. */
    void find(BigDecimal quantity, Amount cost) {
        add(quantity, cost, true);
    }

    /** Puts back what was never really used: it is the next to go out again. */
    void putBack(BigDecimal quantity, Amount cost, boolean estimated) {
        if (method == StockMethod.FIFO) {
            lots.addFirst(new Lot(quantity, cost, estimated));
        } else {
            pool(quantity, cost, estimated);
        }
    }

    Taken take(BigDecimal wanted) {
        BigDecimal missing = wanted;
        Amount cost = Amount.ZERO;
        boolean estimated = false;
        while (missing.signum() > 0 && !lots.isEmpty()) {
            Lot lot = lots.getFirst();
            BigDecimal part = missing.min(lot.left());
            cost = cost.plus(lot.take(part));
            estimated |= lot.estimated();
            missing = missing.subtract(part);
            if (lot.left().signum() == 0) {
                lots.removeFirst();
            }
        }
        return new Taken(wanted.subtract(missing), cost, estimated);
    }

    BigDecimal quantity() {
        return lots.stream().map(Lot::left).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    Amount cost() {
        return lots.stream().map(Lot::costLeft).collect(Amount.sum());
    }

    /** What so much is worth that nobody bought: at the average of what is there, else at the latest lot's cost, else nothing. */
    Amount worth(BigDecimal quantity) {
        if (method == StockMethod.AVERAGE && !lots.isEmpty()) {
            return lots.getFirst().priceOf(quantity);
        }
        // A pot whose cost lay on what was there before it may have become cheaper by more than it brought itself.
        return latest == null ? Amount.ZERO : latest.priceOf(quantity).max(Amount.ZERO);
    }

    /** What is left costs so much more, or less; so does what will be found beyond it. */
    void reprice(Amount change, Amount changeOfLatest, boolean estimated) {
        if (latest != null) {
            latest = latest.costing(changeOfLatest, estimated);
        }
        if (quantity().signum() > 0) {
            pool(BigDecimal.ZERO, change, estimated);
        }
    }

    private void add(BigDecimal quantity, Amount cost, boolean estimated) {
        if (method == StockMethod.FIFO) {
            lots.addLast(new Lot(quantity, cost, estimated));
        } else {
            pool(quantity, cost, estimated);
        }
    }

    private void pool(BigDecimal quantity, Amount cost, boolean estimated) {
        BigDecimal total = quantity().add(quantity);
        Amount totalCost = cost().plus(cost);
        boolean anyEstimated = estimated || lots.stream().anyMatch(Lot::estimated);
        lots.clear();
        lots.add(new Lot(total, totalCost, anyEstimated));
    }
}
