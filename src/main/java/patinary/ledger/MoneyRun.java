package patinary.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import patinary.money.Amount;

/** What counts of money post once something before them is another: a count explains the difference to the books. */
final class MoneyRun {

    /** What a seal posts corrects what is before it, and stands before all that is done on its day. */
    private static final Comparator<DocumentRef> ORDER = Comparator.comparing(
                    (DocumentRef document) -> document.kind() != DocumentKind.YEAR_SEAL)
            .thenComparing(Comparator.naturalOrder());

    private final KeptBooks kept;
    private final Change change;
    private final DocumentRef from;
    private final Map<UUID, List<Entry>> stored;
    private final Map<UUID, List<Entry>> derived;

    /**
     * @param stored what the documents that were looked at had posted; is added to
     * @param derived what they post now; is added to
     */
    MoneyRun(
            KeptBooks kept,
            Change change,
            DocumentRef from,
            Map<UUID, List<Entry>> stored,
            Map<UUID, List<Entry>> derived) {
        this.kept = kept;
        this.change = change;
        this.from = from;
        this.stored = stored;
        this.derived = derived;
    }

    void follow() {
        places().forEach(place -> {
            StrandSet counts = new StrandSet(new CurrentMoves(kept, change)::of);
            counts.follow(Set.of(place));
            List<StrandMove> later = counts.inOrder().stream()
                    .filter(count -> count.document().compareTo(from) >= 0)
                    .toList();
            if (!later.isEmpty()) {
                follow(place, later);
            }
        });
    }

    /** Where the changed documents move money, or did. */
    private Set<UUID> places() {
        Set<UUID> places = new HashSet<>(change.touched(Strands::isOfMoney));
        Stream.concat(
                        change.ids().stream().flatMap(id -> derived.getOrDefault(id, List.of()).stream()),
                        change.stored().values().stream().flatMap(List::stream))
                .filter(entry -> entry.account() == Account.MONEY)
                .map(entry -> entry.posting().tags().place())
                .filter(place -> place != null)
                .forEach(places::add);
        return places;
    }

    private void follow(UUID place, List<StrandMove> counts) {
        Map<UUID, StrandMove> countOf = new HashMap<>();
        counts.forEach(count -> countOf.put(count.document().id(), count));
        TreeMap<DocumentRef, List<Entry>> documents = new TreeMap<>(ORDER);
        documents.putAll(now(kept.moneyFrom(place, from.date())));
        load(counts);
        counts.forEach(count ->
                documents.put(count.document(), derived.get(count.document().id())));
        Amount held = kept.heldBefore(place, from.date());
        for (Map.Entry<DocumentRef, List<Entry>> document : documents.entrySet()) {
            StrandMove count = countOf.get(document.getKey().id());
            held = count == null
                    ? held.plus(moved(place, document.getValue(), move -> true))
                    : count(place, held, count, document.getValue());
        }
    }

    /** Stored postings, but of documents that were looked at those that they have now. */
    private Map<DocumentRef, List<Entry>> now(List<Entry> money) {
        Map<DocumentRef, List<Entry>> result = new LinkedHashMap<>();
        money.stream()
                .filter(entry -> !change.ids().contains(entry.document().id()))
                .forEach(entry -> result.computeIfAbsent(entry.document(), d -> new ArrayList<>())
                        .add(entry));
        change.present()
                .forEach(document -> result.put(
                        document.document(),
                        derived.getOrDefault(document.document().id(), List.of())));
        return result;
    }

    private void load(List<StrandMove> counts) {
        Set<UUID> missing = counts.stream().map(count -> count.document().id()).collect(Collectors.toSet());
        missing.removeAll(derived.keySet());
        if (!missing.isEmpty()) {
            Map<UUID, List<Entry>> found = PostingStore.grouped(kept.entries(missing));
            missing.forEach(id -> {
                stored.put(id, found.getOrDefault(id, List.of()));
                derived.put(id, found.getOrDefault(id, List.of()));
            });
        }
    }

    private static Amount moved(UUID place, List<Entry> entries, IntPredicate moves) {
        return entries.stream()
                .filter(entry -> entry.isOf(place) && moves.test(entry.move()))
                .map(entry -> entry.posting().amount())
                .collect(Amount.sum());
    }

    /** Posts what the count explains in place of what it had posted; returns what the place holds after the document. */
    private Amount count(UUID place, Amount before, StrandMove count, List<Entry> entries) {
        List<Entry> others =
                entries.stream().filter(entry -> entry.move() != count.number()).toList();
        Amount held = before.plus(moved(place, others, move -> move < count.number()));
        Journal journal = new Journal();
        journal.open(count.document());
        journal.move(count.number());
        MoneyBook book = new MoneyBook(journal);
        book.hold(place, held);
        Move.MoneyCounted counted = (Move.MoneyCounted) count.move();
        book.count(counted);
        derived.put(
                count.document().id(),
                Stream.concat(others.stream(), journal.take().stream())
                        .sorted(Comparator.comparing(Entry::move))
                        .toList());
        return counted.amount().plus(moved(place, others, move -> move > count.number()));
    }
}
