package patinary.ledger;

import java.util.UUID;
import patinary.money.Amount;

/** Where the cost of what was used on pieces goes. */
interface PieceCosts {

    /** Adds cost to a piece; one-sided. */
    void in(UUID piece, Amount amount, Tags tags);
}
