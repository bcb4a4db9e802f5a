package patinary.ledger;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Documents that were recorded, changed or removed, as the books know them and as they are now.
 */
final class Change {

    /** What is stored of documents until they change. */
    record Was(Set<UUID> ids, List<StrandMove> moves, Map<UUID, List<Entry>> posted) {

        static Was of(Collection<UUID> ids, KeptBooks kept) {
            return new Was(Set.copyOf(ids), kept.movesOf(ids), PostingStore.grouped(kept.entries(ids)));
        }
    }

    private final Set<UUID> ids;
    private final Map<UUID, DocumentMoves> now = new HashMap<>();
    private final List<StrandMove> before;
    private final List<StrandMove> after;
    private final List<StrandMove> differing;
    private final Map<UUID, List<Entry>> stored;

    /**
     * @param ids all documents of the change
     * @param present those that are there after it, as they are now
     * @param kept what is stored from before
     */
    Change(Collection<UUID> ids, Collection<DocumentMoves> present, KeptBooks kept) {
        this(Was.of(ids, kept), present);
    }

    Change(Was was, Collection<DocumentMoves> present) {
        ids = was.ids();
        present.forEach(document -> now.put(document.document().id(), document));
        before = was.moves();
        after = present.stream()
                .flatMap(document -> Strands.of(document).stream())
                .toList();
        differing = differing(before, after);
        stored = was.posted();
    }

    Set<UUID> ids() {
        return ids;
    }

    /** The moves that the documents now have in strands. */
    List<StrandMove> after() {
        return after;
    }

    Collection<DocumentMoves> present() {
        return now.values();
    }

    @Nullable
    DocumentMoves now(UUID document) {
        return now.get(document);
    }

    /** What was posted by the documents until now. */
    Map<UUID, List<Entry>> stored() {
        return stored;
    }

    /** Whether strands must be written anew. */
    boolean movesStrands() {
        return !differing.isEmpty();
    }

    /** The strands of one sort in which something is not as it was. */
    Set<UUID> touched(Predicate<Move> sort) {
        return differing.stream()
                .filter(move -> sort.test(move.move()))
                .map(StrandMove::strand)
                .collect(Collectors.toSet());
    }

    /** The first document, in canonical order, whose postings may be others; nothing where none has or had any. */
    Optional<DocumentRef> from() {
        return Stream.of(
                        before.stream().map(StrandMove::document),
                        stored.values().stream().flatMap(List::stream).map(Entry::document),
                        now.values().stream()
                                .filter(document -> !document.moves().isEmpty())
                                .map(DocumentMoves::document))
                .flatMap(all -> all)
                .min(DocumentRef::compareTo);
    }

    /** What stands on one side only. */
    private static List<StrandMove> differing(List<StrandMove> before, List<StrandMove> after) {
        Map<StrandRow, StrandMove> was = rows(before);
        Map<StrandRow, StrandMove> is = rows(after);
        Set<StrandRow> both = new HashSet<>(was.keySet());
        both.retainAll(is.keySet());
        was.keySet().removeAll(both);
        is.keySet().removeAll(both);
        return Stream.concat(was.values().stream(), is.values().stream()).toList();
    }

    private static Map<StrandRow, StrandMove> rows(List<StrandMove> moves) {
        Map<StrandRow, StrandMove> rows = new HashMap<>();
        moves.forEach(move -> rows.put(StrandRow.of(move), move));
        return rows;
    }
}
