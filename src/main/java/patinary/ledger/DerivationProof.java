package patinary.ledger;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Where {@code patinary.books.proved} asks for it, as tests do, holds every change that was derived by what it touches against all
 * documents replayed.
 */
@Component
class DerivationProof {

    private final Documents documents;
    private final PostingStore postings;
    private final SealStore sealed;
    private final BooksSettings settings;
    private final boolean wanted;

    DerivationProof(
            Documents documents,
            PostingStore postings,
            SealStore sealed,
            BooksSettings settings,
            @Value("${patinary.books.proved:false}") boolean wanted) {
        this.documents = documents;
        this.postings = postings;
        this.sealed = sealed;
        this.settings = settings;
        this.wanted = wanted;
    }

    /**
     * Before anything is stored: what replay refuses is refused, and nothing else.
     *
     * @return what replay gives, where it was asked for
     */
    Optional<Replay.Result> problems(List<Problem> found) {
        if (!wanted) {
            return Optional.empty();
        }
        Replay.Result replay = Replay.of(settings.stockMethod(), documents.moves());
        if (!Set.copyOf(found).equals(Set.copyOf(replay.problems()))) {
            throw new IllegalStateException("Replay refuses " + replay.problems() + ", the change " + found);
        }
        return Optional.of(replay);
    }

    /** After it is stored: the postings are those of replay. */
    void postings(Replay.Result replay) {
        Map<UUID, List<Entry>> expected =
                PostingStore.grouped(SealedPostings.laidOver(documents.seals(), sealed.all(), replay.entries()));
        Map<UUID, List<Entry>> found = postings.all();
        expected.forEach((document, entries) -> {
            if (!entries.equals(found.get(document))) {
                throw new IllegalStateException("Replay gives " + entries + ", the change " + found.get(document));
            }
        });
        if (found.size() != expected.size()) {
            throw new IllegalStateException("Postings of documents that have none by replay");
        }
    }
}
