package patinary.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import patinary.money.Amount;

/** One outgoing move of a supply: how much of it has its cost, and how much still waits for a receipt. */
final class Use {

    private final DocumentRef document;
    private final Move.SupplyOut move;
    private BigDecimal costed = BigDecimal.ZERO;
    private BigDecimal waiting;
    private Amount cost = Amount.ZERO;
    private boolean priceRemembered;

    Use(DocumentRef document, Move.SupplyOut move) {
        this.document = document;
        this.move = move;
        this.waiting = move.quantity();
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

    BigDecimal quantity() {
        return costed.add(waiting);
    }

    Amount cost() {
        return cost;
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

    /** Whether the cost of this use rests on an estimate: of the price, or of the quantity. */
    boolean estimated() {
        return priceRemembered || move.estimated();
    }

    record Reduction(BigDecimal quantity, Amount cost, boolean priceRemembered) {}
}
