package patinary.ledger;

import java.math.BigDecimal;
import patinary.money.Amount;

/**
 * One signed amount on one account, derived from a document. The postings of a document add to zero.
 *
 * @param document the document that caused it, whose date it bears
 * @param account where the amount goes
 * @param tags what it is about
 * @param amount debit positive, credit negative
 * @param quantity on {@link Account#BENCH} and {@link Account#SHELF}, the signed quantity that moved, in the supply's base
 *     unit; elsewhere zero. A use that precedes its receipt moves its quantity at once and its cost later
 */
public record Posting(DocumentRef document, Account account, Tags tags, Amount amount, BigDecimal quantity) {

    /** Equal quantities are the same however many zeros follow the point, so that stored and derived rows agree. */
    public Posting {
        quantity = quantity.signum() == 0 ? BigDecimal.ZERO : quantity.stripTrailingZeros();
    }

    Posting(DocumentRef document, Account account, Tags tags, Amount amount) {
        this(document, account, tags, amount, BigDecimal.ZERO);
    }
}
