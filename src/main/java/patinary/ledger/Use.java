package patinary.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import patinary.money.Amount;
import patinary.money.Shares;

/** One outgoing move of a supply: how much of it has its cost, and how much still waits for a receipt. */
final class Use {

    private final DocumentRef document;
    private final Move.SupplyOut move;
    private BigDecimal costed = BigDecimal.ZERO;
    private BigDecimal waiting;
    private Amount cost = Amount.ZERO;
    private boolean priceRemembered;
    private Amount charged = Amount.ZERO;
    private BigDecimal more = BigDecimal.ZERO;

    Use(DocumentRef document, Move.SupplyOut move) {
        this.document = document;
        this.move = move;
        this.waiting = move.quantity();
    }

    static Use of(Carried.OpenUse carried) {
        Use use = new Use(carried.document(), carried.move());
        use.costed = carried.costed();
        use.waiting = carried.waiting();
        use.cost = carried.cost();
        use.priceRemembered = carried.priceRemembered();
        use.charged = carried.charged();
        use.more = carried.more();
        return use;
    }

    Carried.OpenUse carried() {
        return new Carried.OpenUse(document, move, costed, waiting, cost, priceRemembered, charged, more);
    }

    DocumentRef document() {
        return document;
    }

    Move.SupplyOut move() {
        return move;
    }

    BigDecimal waiting() {
        return waiting;
    }

    /** How much of it came out of stock. */
    BigDecimal costed() {
        return costed;
    }

    BigDecimal quantity() {
        return costed.add(waiting);
    }

    void settle(Stock.Taken taken) {
        costed = costed.add(taken.quantity());
        waiting = waiting.subtract(taken.quantity());
        cost = cost.plus(taken.cost());
        priceRemembered |= taken.estimated();
    }

    /** What a reduction of this use gives back: the waiting part first, which has no cost yet. */
    Reduction reduce(BigDecimal by) {
        BigDecimal fromWaiting = by.min(waiting);
        BigDecimal fromCosted = by.subtract(fromWaiting);
        Amount back = fromCosted.signum() == 0 ? Amount.ZERO : cost.part(fromCosted, costed, RoundingMode.HALF_UP);
        waiting = waiting.subtract(fromWaiting);
        costed = costed.subtract(fromCosted);
        cost = cost.minus(back);
        return new Reduction(fromCosted, back, priceRemembered);
    }

    /** What came out of stock costs its part of what the use has been charged by now; no reduction gives back the old cost. */
    void reprice() {
        cost = held().signum() == 0 ? Amount.ZERO : charged.part(costed, held(), RoundingMode.HALF_UP);
    }

    /** Whether the cost of this use rests on an estimate: of the price, or of the quantity. */
    boolean estimated() {
        return priceRemembered || move.estimated();
    }

    /** What a count put on this use beside what it said itself. */
    void more(BigDecimal counted) {
        more = more.add(counted);
    }

    /** How much of the stock this use bears the cost of. */
    BigDecimal held() {
        return costed.add(more);
    }

    /** What this use has cost so far, wherever it went. */
    Amount charged() {
        return charged;
    }

    void charge(Amount change) {
        charged = charged.plus(change);
    }

    /**
     * Adds to what is borne of this use, and returns what changes for each weight. The use is always shared as a whole,
     * so that one costed in parts gives each share the same as one costed at once, and nothing where it is undone.
     */
    List<Amount> charge(Amount change, List<BigDecimal> weights) {
        List<Amount> before = Shares.split(charged, weights);
        charge(change);
        List<Amount> after = Shares.split(charged, weights);
        return IntStream.range(0, weights.size())
                .mapToObj(i -> after.get(i).minus(before.get(i)))
                .toList();
    }

    record Reduction(BigDecimal quantity, Amount cost, boolean priceRemembered) {}
}
