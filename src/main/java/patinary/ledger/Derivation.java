package patinary.ledger;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/**
 * Keeps what is derived true to the documents, in the transaction of each change: a change of a few documents by what it touches
 * ({@link Rederivation}), everything at once where seals or the costing method change ({@link Replay}).
 */
@Component
class Derivation {

    private final Documents documents;
    private final BookStore books;
    private final SealStore sealed;
    private final BooksSettings settings;
    private final DerivationProof proof;
    private final List<AfterChange> after;

    Derivation(
            Documents documents,
            BookStore books,
            SealStore sealed,
            BooksSettings settings,
            DerivationProof proof,
            List<AfterChange> after) {
        this.documents = documents;
        this.books = books;
        this.sealed = sealed;
        this.settings = settings;
        this.proof = proof;
        this.after = after;
    }

    /**
     * After documents were recorded or changed.
     *
     * @throws Refused where they cannot be true beside the others
     */
    void ofChanged(Collection<? extends Document> several) {
        documents.flush();
        derive(several, new Change(ids(several), moves(several), books));
    }

    /**
     * Removes documents, and derives what follows.
     *
     * @param remove takes the documents themselves away, once nothing hangs on them any more
     * @throws Refused where others rest on one of them
     */
    void ofRemoved(Collection<? extends Document> several, Runnable remove) {
        ofTakenBack(several, Set.of(), remove, List::of);
    }

    /**
     * Removes some documents, puts others back to what they were, and derives what follows from both together.
     *
     * @param others the ids of those that are put back
     * @param remove takes the first away, once nothing hangs on them any more
     * @param putBack writes the others, and gives them
     * @throws Refused where what is left cannot be true together
     */
    void ofTakenBack(
            Collection<? extends Document> several,
            Set<UUID> others,
            Runnable remove,
            Supplier<List<? extends Document>> putBack) {
        Set<UUID> all = new HashSet<>(others);
        all.addAll(ids(several));
        Change.Was was = Change.Was.of(all, books);
        books.forget(ids(several));
        remove.run();
        documents.flush();
        List<? extends Document> there = putBack.get();
        derive(Stream.concat(several.stream(), there.stream()).toList(), new Change(was, moves(there)));
    }

    private static List<DocumentMoves> moves(Collection<? extends Document> several) {
        return several.stream()
                .map(document -> new DocumentMoves(document.ref(), document.moves()))
                .toList();
    }

    private void derive(Collection<? extends Document> several, Change change) {
        if (needsAll(several, change)) {
            tell(several, deriveAll(documents.seals()));
            return;
        }
        Rederivation.Result result = Rederivation.of(settings.stockMethod(), books, change);
        Optional<Replay.Result> replay = proof.problems(result.problems());
        refuse(result.problems());
        PostingChange written = books.take(change, result);
        replay.ifPresent(proof::postings);
        tell(several, written);
    }

    private void tell(Collection<? extends Document> several, PostingChange written) {
        Set<UUID> documents = written.documents();
        documents.addAll(ids(several));
        after.forEach(one -> one.booksChanged(documents));
    }

    /** Also where a step of a document of a sealed year moves postings: what it corrects there is posted after the seal. */
    private boolean needsAll(Collection<? extends Document> several, Change change) {
        LocalDate last = documents.sealedUpTo().orElse(LocalDate.MIN);
        return !books.isKept()
                || several.stream().anyMatch(document -> document.kind() == DocumentKind.YEAR_SEAL)
                || change.from().filter(from -> !from.date().isAfter(last)).isPresent();
    }

    /**
     * Derives everything anew. Seals that came without what they sealed, out of an archive from before it was kept, keep
     * what their documents give now.
     */
    void ofAll() {
        List<DocumentRef> seals = documents.seals();
        if (!seals.isEmpty() && sealed.isEmpty()) {
            deriveAll(List.of());
            seals.forEach(sealed::keep);
        }
        deriveAll(documents.seals());
        after.forEach(AfterChange::booksRebuilt);
    }

    private PostingChange deriveAll(List<DocumentRef> seals) {
        documents.flush();
        List<DocumentMoves> all = documents.moves();
        Replay.Result result = Replay.of(settings.stockMethod(), all);
        refuse(result.problems());
        List<Entry> kept = seals.isEmpty() ? List.of() : sealed.all();
        return books.takeAll(all, SealedPostings.laidOver(seals, kept, result.entries()), result.uncosted());
    }

    private static void refuse(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
    }

    private static List<UUID> ids(Collection<? extends Document> several) {
        return several.stream().map(Document::id).collect(Collectors.toList());
    }
}
