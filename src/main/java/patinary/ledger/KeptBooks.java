package patinary.ledger;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import patinary.money.Amount;

/** What is stored of the books, as far as a change needs it: the moves of strands, and postings. */
interface KeptBooks {

    /** The moves of these documents that belong to strands, as they were when they were last derived. */
    List<StrandMove> movesOf(Collection<UUID> documents);

    /** All moves of these strands, in any order. */
    List<StrandMove> strands(Collection<UUID> strands);

    /** All postings of these documents, each document's in their order. */
    List<Entry> entries(Collection<UUID> documents);

    /** All postings of what these pieces cost, or were meant to cost. */
    List<Entry> pieceCosts(Collection<UUID> pieces);

    /** What a money place held before a day. */
    Amount heldBefore(UUID place, LocalDate day);

    /** All postings of a money place on a day and later. */
    List<Entry> moneyFrom(UUID place, LocalDate day);
}
