package patinary.ledger;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Repository;
import patinary.money.Amount;

/** All that is derived and stored: postings, moves of strands, what is carried forward of supplies, and uses without a cost. */
@Repository
class BookStore implements KeptBooks {

    private final PostingStore postings;
    private final StrandStore strands;
    private final CarriedStore carried;
    private final UncostedStore uncosted;

    BookStore(PostingStore postings, StrandStore strands, CarriedStore carried, UncostedStore uncosted) {
        this.postings = postings;
        this.strands = strands;
        this.carried = carried;
        this.uncosted = uncosted;
    }

    /** Whether a change can be derived by itself; a shop from before must be derived as a whole once. */
    boolean isKept() {
        return strands.isKept();
    }

    /** Removes all that hangs on documents that are removed themselves. */
    void forget(Collection<UUID> documents) {
        postings.delete(documents);
        uncosted.forget(documents);
        strands.replace(documents, List.of());
    }

    /** Writes only the documents whose postings differ from what is stored. */
    PostingChange take(Change change, Rederivation.Result result) {
        if (change.movesStrands()) {
            strands.replace(change.ids(), change.after());
        }
        uncosted.replace(result.supplies(), result.uncosted());
        change.from().ifPresent(from -> carried.replace(result.supplies(), from.date(), result.carried()));
        return write(PostingChange.between(result.stored(), result.derived()));
    }

    /** The same for the books as a whole. */
    PostingChange takeAll(Collection<DocumentMoves> documents, List<Entry> derived, List<Replay.Uncosted> uses) {
        strands.replaceAll(documents.stream()
                .flatMap(document -> Strands.of(document).stream())
                .toList());
        uncosted.replaceAll(uses);
        carried.forgetAll();
        return write(PostingChange.between(postings.all(), PostingStore.grouped(derived)));
    }

    private PostingChange write(PostingChange change) {
        postings.delete(change.stale());
        postings.insert(change.fresh());
        return change;
    }

    @Override
    public List<StrandMove> movesOf(Collection<UUID> documents) {
        return strands.ofDocuments(documents);
    }

    @Override
    public List<StrandMove> strands(Collection<UUID> wanted) {
        return strands.ofStrands(wanted);
    }

    @Override
    public List<StrandMove> strandFrom(UUID strand, LocalDate day) {
        return strands.from(strand, day);
    }

    @Override
    public List<Carried> carried(Collection<UUID> supplies, LocalDate day) {
        return carried.latest(supplies, day);
    }

    @Override
    public Optional<Carried> carriedWhole(UUID supply, LocalDate day) {
        return carried.latestWhole(List.of(supply), day).stream().findFirst();
    }

    @Override
    public Carried.Rule carriedRule() {
        return carried.rule();
    }

    @Override
    public List<Entry> entries(Collection<UUID> documents) {
        return postings.of(documents);
    }

    @Override
    public List<Entry> pieceCosts(Collection<UUID> pieces) {
        return postings.pieceCosts(pieces);
    }

    @Override
    public Amount heldBefore(UUID place, LocalDate day) {
        return postings.heldBefore(place, day);
    }

    @Override
    public List<Entry> moneyFrom(UUID place, LocalDate day) {
        return postings.moneyFrom(place, day);
    }
}
