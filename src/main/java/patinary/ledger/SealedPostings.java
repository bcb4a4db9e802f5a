package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * Lays what was sealed over what the documents give today. Up to the last sealed day the books are the sealed postings and
 * nothing else. Where the documents would give others, because the calculation or the costing method is another one by now,
 * the difference is posted on the first day after it, under the seal: from there on stock, pieces and every balance are
 * what the calculation says. Pure; docs/decisions/0014-sealed-postings.md says why.
 */
final class SealedPostings {

    /** What a difference is about: everything about a posting but its amount. It belongs to the document that it corrects. */
    private record Key(Account account, Tags tags) {

        static Key of(Posting posting) {
            UUID origin = posting.tags().origin();
            return new Key(
                    posting.account(),
                    posting.tags()
                            .withOrigin(origin == null ? posting.document().id() : origin));
        }

        /** So that the rows of a difference stand in the same order on every machine. */
        String order() {
            return Stream.of(
                            text(tags.origin()),
                            account.name(),
                            text(tags.piece()),
                            text(tags.supply()),
                            text(tags.place()),
                            text(tags.party()),
                            text(tags.category()),
                            String.valueOf(tags.estimated()))
                    .reduce("", (one, other) -> one + ' ' + other);
        }

        private static String text(@Nullable Object value) {
            return Objects.toString(value, "");
        }
    }

    private record Sum(Amount amount, BigDecimal quantity) {
        static final Sum NONE = new Sum(Amount.ZERO, BigDecimal.ZERO);

        Sum plus(Amount moreAmount, BigDecimal moreQuantity) {
            return new Sum(amount.plus(moreAmount), quantity.add(moreQuantity));
        }

        boolean isNothing() {
            return amount.isZero() && quantity.signum() == 0;
        }
    }

    private SealedPostings() {}

    /**
     * The postings of the books.
     *
     * @param seals all seals; the latest says up to which day what was sealed holds
     * @param sealed what was sealed, of all seals together, each document's postings in their order
     * @param derived what all documents give, in canonical order
     * @return what was sealed, the difference, and what was derived for later days
     */
    static List<Entry> laidOver(Collection<DocumentRef> seals, Collection<Entry> sealed, List<Entry> derived) {
        DocumentRef seal = seals.stream().max(Comparator.naturalOrder()).orElse(null);
        if (seal == null) {
            return derived;
        }
        LocalDate last = seal.date();
        List<Entry> result = new ArrayList<>(sealed);
        List<Entry> within = new ArrayList<>();
        List<Entry> later = new ArrayList<>();
        derived.forEach(entry -> (entry.document().date().isAfter(last) ? later : within).add(entry));
        result.addAll(differences(firstOpenDay(seal), within, sealed));
        result.addAll(later);
        return List.copyOf(result);
    }

    /** The seal as the document of what is posted on the first day after it. */
    private static DocumentRef firstOpenDay(DocumentRef seal) {
        return new DocumentRef(seal.id(), seal.kind(), seal.date().plusDays(1));
    }

    private static List<Entry> differences(DocumentRef under, List<Entry> derived, Collection<Entry> sealed) {
        TreeMap<Key, Sum> sums = new TreeMap<>(Comparator.comparing(Key::order));
        derived.stream()
                .map(Entry::posting)
                .forEach(posting -> add(sums, posting, posting.amount(), posting.quantity()));
        sealed.stream()
                .map(Entry::posting)
                .forEach(posting -> add(
                        sums,
                        posting,
                        posting.amount().negated(),
                        posting.quantity().negate()));
        return sums.entrySet().stream()
                .filter(entry -> !entry.getValue().isNothing())
                .map(entry -> new Posting(
                        under,
                        entry.getKey().account(),
                        entry.getKey().tags(),
                        entry.getValue().amount(),
                        entry.getValue().quantity()))
                .map(posting -> new Entry(posting, 0, null))
                .toList();
    }

    private static void add(TreeMap<Key, Sum> sums, Posting posting, Amount amount, BigDecimal quantity) {
        sums.merge(
                Key.of(posting),
                Sum.NONE.plus(amount, quantity),
                (one, other) -> one.plus(other.amount(), other.quantity()));
    }
}
