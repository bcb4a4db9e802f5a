package patinary.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.ledger.StrandMove.Step;

/**
 * Derives anew what a change touches and nothing else, to the same postings that {@link Replay} gives for all documents. Nothing
 * is ever posted before the document that causes it, so all is done from the first changed document on. Costs flow from supplies
 * to pieces and never back: first the supplies of the change are followed by themselves, then the pieces that they, or the
 * change, reach; what other supplies delivered to these pieces is read from the stored postings. Pure, but for what it reads.
 */
final class Rederivation {

    /**
     * What became of the documents that were looked at.
     *
     * @param stored what they had posted
     * @param derived what they post now
     * @param supplies the supplies that were followed
     * @param uncosted all uses of these supplies that no receipt has given a cost yet
     * @param carried what is carried forward of these supplies: all that is later than the change, and what was missing before it
     */
    record Result(
            Map<UUID, List<Entry>> stored,
            Map<UUID, List<Entry>> derived,
            List<Problem> problems,
            Set<UUID> supplies,
            List<Replay.Uncosted> uncosted,
            List<Carried> carried) {}

    private final KeptBooks kept;
    private final Change change;
    private final DocumentRef from;
    private final Beginnings beginnings;
    private final StrandSet supplies;
    private final SupplyRun run;
    private final Map<UUID, List<Entry>> stored = new HashMap<>();
    private final Map<UUID, List<Entry>> derived = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private Rederivation(StockMethod method, KeptBooks kept, Change change, DocumentRef from) {
        this.kept = kept;
        this.change = change;
        this.from = from;
        beginnings = new Beginnings(kept, new CurrentMoves(kept, change), from.date());
        supplies = new StrandSet(beginnings::moves);
        supplies.follow(change.touched(Strands::isOfSupplies));
        run = SupplyRun.of(method, beginnings.begun(), supplies.inOrder(), from, kept.carriedRule());
        stored.putAll(change.stored());
    }

    /** Nothing where no document of the change posts, or posted, anything. */
    static Result of(StockMethod method, KeptBooks kept, Change change) {
        return change.from()
                .map(from -> new Rederivation(method, kept, change, from).result())
                .orElse(new Result(Map.of(), Map.of(), List.of(), Set.of(), List.of(), List.of()));
    }

    private Result result() {
        Set<DocumentRef> documents = new TreeSet<>(supplies.documentsFrom(from));
        change.present().forEach(document -> documents.add(document.document()));
        load(documents);
        PieceRun pieces = PieceRun.of(kept, change, piecesReached(documents), from);
        documents.addAll(pieces.documents());
        load(documents);
        documents.forEach(document -> derived.put(document.id(), follow(document, pieces)));
        problems.addAll(run.problems());
        problems.addAll(pieces.problems());
        new MoneyRun(kept, change, from, stored, derived).follow();
        return new Result(stored, derived, problems, supplies.strands(), run.uncosted(), carried());
    }

    private List<Carried> carried() {
        return run.carried().stream().filter(beginnings::isLater).toList();
    }

    private void load(Set<DocumentRef> documents) {
        Set<UUID> missing = documents.stream().map(DocumentRef::id).collect(Collectors.toSet());
        missing.removeAll(stored.keySet());
        missing.removeAll(change.ids());
        if (!missing.isEmpty()) {
            missing.forEach(id -> stored.put(id, List.of()));
            stored.putAll(PostingStore.grouped(kept.entries(missing)));
        }
    }

    /** The pieces that the followed supplies deliver to, or did, and those that the changed documents cost anything. */
    private Set<UUID> piecesReached(Set<DocumentRef> documents) {
        Set<UUID> reached = new HashSet<>(change.touched(Strands::isOfPieces));
        reached.addAll(run.pieces());
        Stream<Entry> of = documents.stream()
                .flatMap(document -> stored.getOrDefault(document.id(), List.of()).stream())
                .filter(entry -> supplies.has(new Step(entry.document().id(), entry.move())));
        Stream.concat(of, change.stored().values().stream().flatMap(List::stream))
                .filter(Entry::isPieceCost)
                .map(Entry::intended)
                .forEach(reached::add);
        return reached;
    }

    private List<Entry> follow(DocumentRef document, PieceRun pieces) {
        pieces.open(document);
        DocumentMoves now = change.now(document.id());
        numbers(document, now, pieces).forEach(number -> {
            Step step = new Step(document.id(), number);
            pieces.move(number);
            if (now != null && now.moves().get(number) instanceof Move.Post post) {
                pieces.post(post);
            } else if (supplies.has(step)) {
                run.at(step).forEach(pieces::follow);
            } else if (pieces.has(step)) {
                pieces.carryOut(step);
            } else {
                pieces.keep(stored.getOrDefault(document.id(), List.of()).stream()
                        .filter(entry -> entry.move() == number)
                        .filter(entry ->
                                now == null || !Strands.isOfMoney(now.moves().get(number)))
                        .toList());
            }
        });
        return pieces.close();
    }

    /** All moves of a changed document; of another those that gave, or give, anything. */
    private Set<Integer> numbers(DocumentRef document, @Nullable DocumentMoves now, PieceRun pieces) {
        Set<Integer> numbers = new TreeSet<>();
        if (now != null) {
            for (int number = 0; number < now.moves().size(); number++) {
                numbers.add(number);
            }
            return numbers;
        }
        stored.getOrDefault(document.id(), List.of()).forEach(entry -> numbers.add(entry.move()));
        numbers.addAll(supplies.numbers(document));
        numbers.addAll(pieces.numbers(document));
        return numbers;
    }
}
