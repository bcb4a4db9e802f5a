package patinary.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Move.Destination;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * One supply at one place through time: what came in, what went out at which cost, which uses wait for a receipt, and
 * which estimated uses the next count will settle.
 */
final class SupplyBook {

    private static final int SHARE_SCALE = 14;

    private final UUID supply;
    private final StockPlace place;
    private final SupplyBooks books;
    private final Stock stock;
    private final List<Use> waiting = new ArrayList<>();
    private final List<Use> sinceCount = new ArrayList<>();
    private final Bearers bearers = new Bearers();
    /** Whether uses since the last count are missing here, so that no count can be followed. */
    private boolean leavesOut;

    SupplyBook(UUID supply, StockPlace place, StockMethod method, SupplyBooks books) {
        this.supply = supply;
        this.place = place;
        this.books = books;
        this.stock = new Stock(method);
    }

    /** Takes over what was here before; of a supply that is tied to no pot, whose uses nothing reprices. */
    void restore(Carried.AtPlace carried) {
        stock.restore(carried.lots(), carried.latest());
        leavesOut = !carried.whole();
        List<Use> uses = carried.uses().stream().map(Use::of).toList();
        carried.waiting().forEach(number -> waiting.add(uses.get(number)));
        carried.sinceCount().forEach(number -> sinceCount.add(uses.get(number)));
    }

    /**
     * What is here now, to be taken over by {@link #restore}.
     *
     * @param most how many uses since the last count at most; where there are more, all of them are left out
     */
    Carried.AtPlace carried(int most) {
        boolean whole = !leavesOut && sinceCount.size() <= most;
        return Carried.AtPlace.of(place, stock, waiting, whole ? sinceCount : List.of(), whole);
    }

    /** Brings a quantity in, one-sided, and settles the uses that waited for it. */
    void bring(BigDecimal quantity, Amount cost, Tags tags) {
        books.journal().stock(place, tags.withSupply(supply), quantity, cost);
        stock.bring(quantity, cost.plus(bearers.pending()), tags.estimated() || bearers.pendingEstimated());
        bearers.taken();
        settleWaiting();
    }

    /**
     * What is here was made at more cost, or less, than the books knew: every use of it bears its part, what a count wrote
     * off does, and the rest stays on what is left.
     */
    void reprice(Amount change, Tags tags) {
        books.journal().stock(place, tags.withSupply(supply), BigDecimal.ZERO, change);
        if (bearers.isNobody(stock.quantity())) {
            bearers.await(change, tags.estimated());
            return;
        }
        Bearers.Change shares = bearers.share(change, stock.quantity(), stock.cost());
        stock.reprice(shares.onStock(), change, tags.estimated());
        writeOff(shares.onLost(), tags.estimated());
        shares.onUses().forEach((use, amount) -> {
            give(use, amount, tags.estimated() || use.estimated());
            use.reprice();
        });
    }

    /** A use waits for what is not there yet; a tool that outlives its uses does not: its price was given out. */
    Use take(Move.SupplyOut wanted) {
        Move.SupplyOut move = wanted.wears() ? wanted.atMost(stock.quantity()) : wanted;
        Use use = new Use(books.journal().document(), move);
        bearers.add(use);
        books.journal().stock(place, Tags.supply(supply), move.quantity().negate(), Amount.ZERO);
        settle(use);
        if (use.waiting().signum() > 0) {
            waiting.add(use);
        }
        if (move.estimated() && !(move.to() instanceof Destination.Place)) {
            sinceCount.add(use);
        }
        return use;
    }

    /** Undoes part of earlier uses, latest first: what waited is forgotten, what had a cost comes back with it. */
    void back(BigDecimal quantity, List<Use> uses) {
        BigDecimal missing = quantity;
        for (int i = uses.size() - 1; i >= 0 && missing.signum() > 0; i--) {
            Use use = uses.get(i);
            BigDecimal part = missing.min(use.quantity());
            missing = missing.subtract(part);
            Use.Reduction reduction = use.reduce(part);
            give(use, reduction.cost().negated(), use.estimated());
            if (reduction.quantity().signum() > 0) {
                stock.putBack(reduction.quantity(), reduction.cost(), reduction.priceRemembered());
            }
        }
        BigDecimal done = quantity.subtract(missing);
        books.journal().stock(place, Tags.supply(supply), done, Amount.ZERO);
        if (missing.signum() > 0) {
            books.journal().problem(Problem.Reason.MORE_BACK_THAN_SOLD, supply);
        }
        settleWaiting();
    }

    /** Settles the difference between the books and a count; what is missing goes to write-offs where it was waste. */
    void count(BigDecimal counted, boolean waste) {
        if (leavesOut) {
            throw new IllegalStateException("Uses that this count settles were left out: " + supply);
        }
        BigDecimal difference = bookQuantity().subtract(counted);
        books.journal().stock(place, Tags.supply(supply), difference.negate(), Amount.ZERO);
        if (difference.signum() > 0) {
            usedMore(difference, waste);
        } else if (difference.signum() < 0) {
            usedLess(difference.negate());
        }
        sinceCount.clear();
    }

    BigDecimal bookQuantity() {
        return stock.quantity().subtract(waiting.stream().map(Use::waiting).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    Amount cost() {
        return stock.cost().plus(bearers.pending());
    }

    List<Use> waiting() {
        return waiting;
    }

    /** Every use of what is here, whether it waits or not. */
    List<Use> uses() {
        return bearers.uses();
    }

    private void usedMore(BigDecimal quantity, boolean waste) {
        Stock.Taken taken = stock.take(quantity);
        BigDecimal used = estimatedSinceCount();
        if (waste || used.signum() == 0) {
            bearers.lose(taken);
            writeOff(taken.cost(), taken.estimated());
            return;
        }
        List<Amount> shares = Shares.split(
                taken.cost(), sinceCount.stream().map(Use::quantity).toList());
        for (int i = 0; i < shares.size(); i++) {
            Use use = sinceCount.get(i);
            use.more(taken.quantity().multiply(use.quantity()).divide(used, SHARE_SCALE, RoundingMode.HALF_UP));
            give(use, shares.get(i), true);
        }
    }

    private void writeOff(Amount cost, boolean estimated) {
        Tags tags = Tags.supply(supply).withEstimated(estimated);
        books.journal().stock(place, tags, BigDecimal.ZERO, cost.negated());
        books.journal().post(Account.WRITE_OFFS, tags.withCategory("count"), cost);
    }

    private BigDecimal estimatedSinceCount() {
        return sinceCount.stream().map(Use::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private void usedLess(BigDecimal quantity) {
        BigDecimal used = estimatedSinceCount();
        BigDecimal reduced = quantity.min(used);
        if (reduced.signum() > 0) {
            reduceUses(reduced, used);
        }
        waiting.removeIf(use -> use.waiting().signum() == 0);
        BigDecimal found = quantity.subtract(reduced);
        if (found.signum() > 0) {
            Amount worth = stock.worth(found);
            books.journal().stock(place, Tags.supply(supply), BigDecimal.ZERO, worth);
            books.journal().post(Account.FOUND_AT_COUNT, Tags.supply(supply), worth.negated());
            stock.find(found, worth);
        }
        settleWaiting();
    }

    /** Takes the same proportion from every estimated use; rounding of the quantities runs along, so none is lost. */
    private void reduceUses(BigDecimal reduced, BigDecimal used) {
        BigDecimal quantityBack = BigDecimal.ZERO;
        Amount costBack = Amount.ZERO;
        boolean remembered = false;
        BigDecimal running = BigDecimal.ZERO;
        BigDecimal given = BigDecimal.ZERO;
        for (Use use : sinceCount) {
            running = running.add(use.quantity());
            BigDecimal upTo = reduced.multiply(running).divide(used, SHARE_SCALE, RoundingMode.HALF_UP);
            BigDecimal part = upTo.subtract(given).min(use.quantity());
            given = given.add(part);
            Use.Reduction reduction = use.reduce(part);
            quantityBack = quantityBack.add(reduction.quantity());
            costBack = costBack.plus(reduction.cost());
            remembered |= reduction.quantity().signum() > 0 && reduction.priceRemembered();
            give(use, reduction.cost().negated(), true);
        }
        if (quantityBack.signum() > 0) {
            stock.putBack(quantityBack, costBack, remembered);
        }
    }

    private void settleWaiting() {
        for (Use use : List.copyOf(waiting)) {
            settle(use);
        }
        waiting.removeIf(use -> use.waiting().signum() == 0);
    }

    private void settle(Use use) {
        Stock.Taken taken = stock.take(use.waiting());
        if (taken.quantity().signum() == 0) {
            return;
        }
        use.settle(taken);
        boolean estimated = taken.estimated() || use.move().estimated();
        if (use.move().to() instanceof Destination.Place to) {
            Tags tags = tags(use, estimated);
            use.charge(taken.cost());
            books.journal().stock(place, tags, BigDecimal.ZERO, taken.cost().negated());
            books.at(supply, to.place()).bring(taken.quantity(), taken.cost(), tags);
        } else {
            give(use, taken.cost(), estimated);
        }
    }

    /** Moves cost from this stock to where a use went. */
    private void give(Use use, Amount cost, boolean estimated) {
        Tags tags = tags(use, estimated);
        books.journal().stock(place, tags, BigDecimal.ZERO, cost.negated());
        books.deliver(use, cost, tags);
    }

    private Tags tags(Use use, boolean estimated) {
        return Tags.origin(use.document().id()).withSupply(supply).withEstimated(estimated);
    }
}
