package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import patinary.money.Amount;

/**
 * What is known of the money in pieces over some days, as plain rows.
 *
 * @param sales the pieces sold on these days
 * @param stock the pieces in which money lay on any of them
 * @param minutes bench minutes on each piece so far
 */
record MoneyFacts(List<PieceSale> sales, List<StockOfPiece> stock, Map<UUID, BigDecimal> minutes) {

    /**
     * A piece on one sale; it came back where a refund brought it back.
     *
     * @param work what supplies put on it at the bench, as a part of its landed cost; the rest was paid before
     */
    record PieceSale(
            UUID sale, UUID piece, LocalDate day, String channel, boolean cameBack, SaleParts parts, Amount work) {}

    /** The same beside what lay in stock. */
    MoneyFacts beside(List<StockOfPiece> lay) {
        return new MoneyFacts(sales, lay, minutes);
    }
}
