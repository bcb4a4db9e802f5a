package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import patinary.money.Amount;

/**
 * Types a history in over some evenings, in another order than it happened: back-dated receipts, entries with a wrong
 * day or wrong amounts that are put right on a later evening, entries that never happened and are removed. Keeps the
 * books as the program does: derives after each evening, and writes only what differs. What is refused is typed later.
 */
final class Typing {

    private static final int EVENINGS = 4;

    private final StockMethod method;
    private final Random random;
    private final List<DocumentMoves> waiting;
    private final Map<UUID, DocumentMoves> accepted = new HashMap<>();
    private final Map<UUID, List<Entry>> stored = new LinkedHashMap<>();
    private final Map<UUID, DocumentMoves> right = new HashMap<>();

    Typing(StockMethod method, RandomHistory history, long seed) {
        this.method = method;
        random = new Random(seed);
        waiting = new ArrayList<>(history.documents());
        Collections.shuffle(waiting, random);
        waiting.forEach(document -> right.put(document.document().id(), document));
    }

    /** The stored postings by document, when all of the history is in the books and nothing else. */
    Map<UUID, List<Entry>> done() {
        int each = 1 + waiting.size() / EVENINGS;
        for (int evening = 0; evening < EVENINGS; evening++) {
            List<DocumentMoves> now = new ArrayList<>(waiting.subList(0, Math.min(each, waiting.size())));
            now.replaceAll(document -> random.nextInt(5) == 0 ? wrong(document) : document);
            if (random.nextInt(3) == 0) {
                now.add(neverHappened());
            }
            evening(now);
        }
        derive(right);
        return stored;
    }

    private void evening(List<DocumentMoves> typed) {
        Map<UUID, DocumentMoves> wanted = new HashMap<>(accepted);
        typed.forEach(document -> wanted.put(document.document().id(), document));
        Replay.Result result = Replay.of(method, wanted.values());
        if (!result.problems().isEmpty()) {
            Set<UUID> refused =
                    result.problems().stream().map(p -> p.document().id()).collect(Collectors.toSet());
            List<DocumentMoves> rest = typed.stream()
                    .filter(document -> !refused.contains(document.document().id()))
                    .toList();
            if (!rest.isEmpty() && rest.size() < typed.size()) {
                evening(rest);
            }
            return;
        }
        typed.forEach(document -> waiting.removeIf(
                other -> other.document().id().equals(document.document().id())));
        store(wanted, result);
    }

    private void derive(Map<UUID, DocumentMoves> wanted) {
        Replay.Result result = Replay.of(method, wanted.values());
        assertThat(result.problems()).isEmpty();
        store(wanted, result);
    }

    /** Nothing is posted to a day before the first that was typed, changed or removed: so no sealed year changes. */
    private void store(Map<UUID, DocumentMoves> wanted, Replay.Result result) {
        LocalDate from = firstTouched(wanted);
        Map<UUID, List<Entry>> before = before(from);
        PostingChange change = PostingChange.between(stored, PostingStore.grouped(result.entries()));
        change.stale().forEach(stored::remove);
        change.fresh().forEach(fresh -> stored.put(fresh.get(0).document().id(), fresh));
        accepted.clear();
        accepted.putAll(wanted);
        assertThat(before(from)).as("before %s", from).isEqualTo(before);
        assertThat(stored).isEqualTo(PostingStore.grouped(result.entries()));
    }

    private LocalDate firstTouched(Map<UUID, DocumentMoves> wanted) {
        Set<UUID> ids = new HashSet<>(wanted.keySet());
        ids.addAll(accepted.keySet());
        return ids.stream()
                .filter(id -> !Objects.equals(wanted.get(id), accepted.get(id)))
                .flatMap(id -> Stream.of(wanted, accepted).map(documents -> documents.get(id)))
                .filter(Objects::nonNull)
                .map(document -> document.document().date())
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX);
    }

    private Map<UUID, List<Entry>> before(LocalDate day) {
        return stored.entrySet().stream()
                .filter(entry -> entry.getValue().get(0).document().date().isBefore(day))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private DocumentMoves wrong(DocumentMoves document) {
        DocumentRef ref = document.document();
        LocalDate day = ref.date().plusDays(random.nextInt(21) - 10L);
        return new DocumentMoves(
                new DocumentRef(ref.id(), ref.kind(), day),
                document.moves().stream().map(Typing::doubled).toList());
    }

    private static Move doubled(Move move) {
        if (move instanceof Move.Post post) {
            return new Move.Post(post.account(), post.tags(), post.amount().plus(post.amount()));
        } else if (move instanceof Move.SupplyIn in) {
            Amount cost = in.cost().plus(in.cost());
            return new Move.SupplyIn(in.supply(), in.place(), in.quantity(), cost, in.estimated());
        } else if (move instanceof Move.PieceIn in) {
            return new Move.PieceIn(in.piece(), in.cost().plus(in.cost()), in.estimated());
        }
        return move;
    }

    private DocumentMoves neverHappened() {
        return RandomHistory.of(random.nextLong(), 8).documents().stream()
                .filter(document -> document.moves().stream().noneMatch(move -> move instanceof Move.Mixed))
                .findFirst()
                .orElseGet(() -> new DocumentMoves(
                        new DocumentRef(new UUID(1, 1), DocumentKind.EXPENSE, LocalDate.EPOCH), List.of()));
    }
}
