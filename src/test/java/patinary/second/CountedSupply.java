package patinary.second;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * One supply at one place where it was counted, or came back from a sale, or a pot that was kept, walked through in order. A count
 * and a return reach back to earlier uses, and cost of an ingredient to all uses of its pot, which intervals of running quantities
 * cannot do; so this part of the second road is plain code.
 */
final class CountedSupply {

    /** Cost of a drain that came to light with a document. */
    record Outflow(long ord, long drainOrd, int drainLine, long amount) {}

    /** What a count did: the change in quantity, what it wrote off, what it found. */
    record CountResult(long ord, BigDecimal quantity, long writtenOff, long found) {}

    final List<Outflow> outflows = new ArrayList<>();
    final List<CountResult> counts = new ArrayList<>();
    /** How each count came out, for the report of what the data exercises. */
    final List<String> notes = new ArrayList<>();

    private final Deque<Layer> layers = new ArrayDeque<>();
    private final List<Drain> waiting = new ArrayList<>();
    private final List<Drain> byEye = new ArrayList<>();
    private final List<Drain> all = new ArrayList<>();
    private BigDecimal lost = BigDecimal.ZERO;
    private long lostCost;
    private BigDecimal latestQuantity;
    private long latestCost;

    void arrive(long ord, BigDecimal quantity, long cost) {
        layers.addLast(new Layer(quantity, cost));
        latestQuantity = quantity;
        latestCost = cost;
        serveWaiting(ord);
    }

    private void serveWaiting(long ord) {
        waiting.forEach(drain -> draw(ord, drain));
        waiting.removeIf(drain -> drain.waiting.signum() == 0);
    }

    void drain(Drain drain) {
        all.add(drain);
        draw(drain.ord, drain);
        if (drain.waiting.signum() > 0) {
            waiting.add(drain);
        }
        if (drain.byEye) {
            byEye.add(drain);
        }
    }

    void count(long ord, BigDecimal there, boolean waste) {
        BigDecimal missing = books().subtract(there);
        long writtenOff = 0;
        long found = 0;
        if (missing.signum() > 0) {
            notes.add(waste || byEye.isEmpty() ? "short, written off" : "short, on the uses");
            writtenOff = moreUsed(ord, missing, waste);
        } else if (missing.signum() < 0) {
            BigDecimal beyond = lessUsed(ord, missing.negate());
            notes.add(beyond.signum() > 0 ? "over, some found" : "over, on the uses");
            found = find(ord, beyond);
        } else {
            notes.add("as the books");
        }
        if (!waiting.isEmpty()) {
            throw new IllegalStateException("uses still wait after the count " + ord);
        }
        counts.add(new CountResult(ord, missing.negate(), writtenOff, found));
        byEye.clear();
    }

    /** What is here cost so much more: all its cost is shared anew, by quantity, over uses, what a count lost, and what is left. */
    void reprice(long ord, long change) {
        BigDecimal left = layers.stream().map(Layer::left).reduce(BigDecimal.ZERO, BigDecimal::add);
        long leftCost = layers.stream().mapToLong(Layer::costLeft).sum();
        List<BigDecimal> weights = new ArrayList<>(all.stream().map(Drain::held).toList());
        weights.add(lost);
        weights.add(left);
        long used = all.stream().mapToLong(drain -> drain.cost).sum();
        long[] shares = Cents.shared(used + lostCost + leftCost + change, weights);
        for (int i = 0; i < all.size(); i++) {
            charge(ord, all.get(i), shares[i] - all.get(i).cost);
        }
        counts.add(new CountResult(ord, BigDecimal.ZERO, shares[all.size()] - lostCost, 0));
        lostCost = shares[all.size()];
        layers.clear();
        if (left.signum() > 0) {
            layers.add(new Layer(left, shares[all.size() + 1]));
        }
        latestCost += change;
    }

    /** What a sale had taken comes back in front of all else, its last lines first, each at the price it left with. */
    void back(long ord, BigDecimal quantity, long saleOrd) {
        List<Drain> sold = all.stream().filter(drain -> drain.ord == saleOrd).toList();
        BigDecimal missing = quantity;
        for (int i = sold.size() - 1; i >= 0 && missing.signum() > 0; i--) {
            Drain drain = sold.get(i);
            if (drain.waiting.signum() > 0) {
                throw new IllegalStateException("A sale came back before it had its price: " + ord);
            }
            BigDecimal part = missing.min(drain.quantity);
            if (part.signum() > 0) {
                long cost = Cents.halfUp(part.multiply(BigDecimal.valueOf(drain.cost)), drain.quantity);
                drain.quantity = drain.quantity.subtract(part);
                charge(ord, drain, -cost);
                layers.addFirst(new Layer(part, cost));
                missing = missing.subtract(part);
            }
        }
        if (missing.signum() > 0) {
            throw new IllegalStateException("More came back than was sold: " + ord);
        }
        serveWaiting(ord);
    }

    private BigDecimal books() {
        BigDecimal left = layers.stream().map(Layer::left).reduce(BigDecimal.ZERO, BigDecimal::add);
        return waiting.stream().map(drain -> drain.waiting).reduce(left, BigDecimal::subtract);
    }

    private void draw(long ord, Drain drain) {
        BigDecimal wanted = drain.waiting;
        long cost = 0;
        while (drain.waiting.signum() > 0 && !layers.isEmpty()) {
            BigDecimal piece = drain.waiting.min(layers.getFirst().left());
            cost += take(piece);
            drain.waiting = drain.waiting.subtract(piece);
        }
        if (drain.waiting.compareTo(wanted) < 0) {
            charge(ord, drain, cost);
        }
    }

    private long take(BigDecimal quantity) {
        Layer first = layers.getFirst();
        long cost = first.take(quantity);
        if (first.left().signum() == 0) {
            layers.removeFirst();
        }
        return cost;
    }

    private void charge(long ord, Drain drain, long cost) {
        drain.cost += cost;
        outflows.add(new Outflow(ord, drain.ord, drain.line, cost));
    }

    private long moreUsed(long ord, BigDecimal missing, boolean waste) {
        long cost = 0;
        for (BigDecimal left = missing; left.signum() > 0; ) {
            BigDecimal piece = left.min(layers.getFirst().left());
            cost += take(piece);
            left = left.subtract(piece);
        }
        if (waste || byEye.isEmpty()) {
            lost = lost.add(missing);
            lostCost += cost;
            return cost;
        }
        long[] shares =
                Cents.shared(cost, byEye.stream().map(drain -> drain.quantity).toList());
        BigDecimal used = byEye.stream().map(drain -> drain.quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        for (int i = 0; i < shares.length; i++) {
            Drain drain = byEye.get(i);
            drain.more = drain.more.add(missing.multiply(drain.quantity).divide(used, MathContext.DECIMAL128));
            charge(ord, byEye.get(i), shares[i]);
        }
        return 0;
    }

    private BigDecimal lessUsed(long ord, BigDecimal back) {
        BigDecimal used = byEye.stream().map(drain -> drain.quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal given = back.min(used);
        BigDecimal returned = BigDecimal.ZERO;
        long returnedCost = 0;
        for (Drain drain : byEye) {
            BigDecimal less = given.multiply(drain.quantity).divide(used, MathContext.DECIMAL128);
            BigDecimal before = drain.priced();
            BigDecimal unpriced = less.min(drain.waiting);
            BigDecimal priced = less.subtract(unpriced);
            drain.waiting = drain.waiting.subtract(unpriced);
            if (priced.signum() > 0) {
                long cost = Cents.halfUp(priced.multiply(BigDecimal.valueOf(drain.cost)), before);
                returned = returned.add(priced);
                returnedCost += cost;
                charge(ord, drain, -cost);
            }
            drain.quantity = drain.quantity.subtract(less);
        }
        waiting.removeIf(drain -> drain.waiting.signum() == 0);
        if (returned.signum() > 0) {
            layers.addFirst(new Layer(returned, returnedCost));
            serveWaiting(ord);
        }
        return back.subtract(given);
    }

    /** What is found is stock like any other: what still waits draws on it at once. */
    private long find(long ord, BigDecimal quantity) {
        if (quantity.signum() == 0) {
            return 0;
        }
        long cost = latestQuantity == null
                ? 0
                : Cents.halfUp(quantity.multiply(BigDecimal.valueOf(latestCost)), latestQuantity);
        layers.addLast(new Layer(quantity, cost));
        serveWaiting(ord);
        return cost;
    }
}
