package patinary.ledger;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import patinary.money.Amount;

/** What is stored of the books, as far as a change needs it: the moves of strands, and postings. */
interface KeptBooks {

    /** The moves of these documents that belong to strands, as they were when they were last derived. */
    List<StrandMove> movesOf(Collection<UUID> documents);

    /** All moves of these strands, in any order. */
    List<StrandMove> strands(Collection<UUID> strands);

    /** The moves of a strand on a day and later, in any order. */
    List<StrandMove> strandFrom(UUID strand, LocalDate day);

    /** What was last carried forward of each of these supplies to a day or before; nothing of one of which nothing was. */
    List<Carried> carried(Collection<UUID> supplies, LocalDate day);

    /** What was last carried forward of a supply to a day or before, and is whole. */
    Optional<Carried> carriedWhole(UUID supply, LocalDate day);

    /** How often supplies are carried forward, and how much of them. */
    Carried.Rule carriedRule();

    /** All postings of these documents, each document's in their order. */
    List<Entry> entries(Collection<UUID> documents);

    /** All postings of what these pieces cost, or were meant to cost. */
    List<Entry> pieceCosts(Collection<UUID> pieces);

    /** What a money place held before a day. */
    Amount heldBefore(UUID place, LocalDate day);

    /** All postings of a money place on a day and later. */
    List<Entry> moneyFrom(UUID place, LocalDate day);
}
