package patinary.ledger;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import patinary.ledger.StrandMove.Step;
import patinary.money.Amount;

/**
 * Some pieces followed from a document on. Where they stood before it is told by their own moves, what they had cost by the
 * stored postings.
 */
final class PieceRun {

    private final Journal journal = new Journal();
    private final PieceBook book = new PieceBook(journal);
    private final StrandSet strands;
    private final List<Entry> costs;
    private final DocumentRef from;

    private PieceRun(StrandSet strands, List<Entry> costs, DocumentRef from) {
        this.strands = strands;
        this.costs = costs;
        this.from = from;
    }

    static PieceRun of(KeptBooks kept, Change change, Set<UUID> pieces, DocumentRef from) {
        StrandSet strands = new StrandSet(new CurrentMoves(kept, change)::of);
        strands.follow(pieces);
        List<Entry> costs = kept.pieceCosts(strands.strands()).stream()
                .filter(entry -> !change.ids().contains(entry.document().id()))
                .toList();
        PieceRun run = new PieceRun(strands, costs, from);
        run.begin();
        return run;
    }

    private void begin() {
        strands.inOrder().stream()
                .filter(move -> move.document().compareTo(from) < 0)
                .forEach(move -> {
                    journal.open(move.document());
                    book.carryOut(move.move());
                });
        journal.take();
        Map<Tags, Amount> sums = new HashMap<>();
        costs.stream()
                .filter(entry -> isBefore(entry.document()))
                .forEach(entry -> sums.merge(about(entry), entry.posting().amount(), Amount::plus));
        strands.strands().forEach(piece -> {
            Amount exact = sums.getOrDefault(Tags.piece(piece), Amount.ZERO);
            Amount estimated = sums.getOrDefault(Tags.piece(piece).withEstimated(true), Amount.ZERO);
            book.restore(piece, exact, estimated);
        });
    }

    /** The piece on which a cost landed, and whether it is an estimate. */
    private static Tags about(Entry entry) {
        Tags tags = entry.posting().tags();
        return Tags.piece(Objects.requireNonNull(tags.piece())).withEstimated(tags.estimated());
    }

    /** What a seal posts corrects what is before it, and stands before all that is done on its day. */
    private boolean isBefore(DocumentRef document) {
        return document.kind() == DocumentKind.YEAR_SEAL || document.compareTo(from) < 0;
    }

    /** The documents from the first on that move these pieces or bring cost to them. */
    Set<DocumentRef> documents() {
        Set<DocumentRef> documents = new HashSet<>(strands.documentsFrom(from));
        costs.stream()
                .map(Entry::document)
                .filter(document -> !isBefore(document))
                .forEach(documents::add);
        return documents;
    }

    boolean has(Step step) {
        return strands.has(step);
    }

    void open(DocumentRef document) {
        journal.open(document);
    }

    void move(int number) {
        journal.move(number);
    }

    void post(Move.Post post) {
        journal.post(post.account(), post.tags(), post.amount());
    }

    void follow(SupplyRun.Event event) {
        if (event instanceof SupplyRun.Event.Posted posted) {
            journal.keep(posted.entry());
        } else if (event instanceof SupplyRun.Event.Delivered delivered) {
            book.in(delivered.piece(), delivered.amount(), delivered.tags());
        }
    }

    void carryOut(Step step) {
        book.carryOut(strands.move(step));
    }

    /** Keeps what a move of a supply that is not followed had posted, but brings what it delivered to where the piece is now. */
    void keep(List<Entry> entries) {
        int next = 0;
        while (next < entries.size()) {
            Entry first = entries.get(next);
            if (first.isPieceCost() && strands.strands().contains(Objects.requireNonNull(first.intended()))) {
                int end = next + 1;
                while (end < entries.size() && isSameDelivery(first, entries.get(end))) {
                    end++;
                }
                deliver(entries.subList(next, end));
                next = end;
            } else {
                journal.keep(first);
                next++;
            }
        }
    }

    /** What was shared over the parts of a piece stands in several postings, one after another. */
    private static boolean isSameDelivery(Entry one, Entry other) {
        return other.isPieceCost()
                && Objects.equals(one.intended(), other.intended())
                && tags(one).equals(tags(other));
    }

    private void deliver(List<Entry> parts) {
        Entry first = parts.get(0);
        Amount amount = parts.stream().map(part -> part.posting().amount()).collect(Amount.sum());
        book.in(Objects.requireNonNull(first.intended()), amount, tags(first));
    }

    private static Tags tags(Entry entry) {
        Tags tags = entry.posting().tags();
        return new Tags(tags.place(), null, null, tags.supply(), tags.party(), tags.origin(), tags.estimated());
    }

    List<Entry> close() {
        journal.close();
        return journal.take();
    }

    List<Problem> problems() {
        return journal.problems().stream()
                .filter(problem -> problem.document().compareTo(from) >= 0)
                .toList();
    }

    /** The moves of these pieces that a document has. */
    Set<Integer> numbers(DocumentRef document) {
        return strands.numbers(document);
    }
}
