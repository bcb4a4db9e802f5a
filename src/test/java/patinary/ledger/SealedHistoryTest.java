package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/**
 * Random histories that are sealed half way and then go on: late receipts, counts, refunds, sales brought in, documents
 * that are put right or removed, and another calculation than the one that was sealed with. Nothing of it moves a posting of a
 * sealed day, the books balance, and what is left after the seal is what costing says.
 */
class SealedHistoryTest {

    private static final int HISTORIES = 250;
    private static final int SIZE = 60;
    private static final int EDITS = 4;
    private static final LocalDate FIRST_SEALED = LocalDate.of(2025, 12, 1);
    private static final LocalDate LAST_SEALED = LocalDate.of(2025, 12, 31);

    private record Left(Amount amount, BigDecimal quantity) {}

    /** A shop's books: its documents, what was sealed of them, and the stored postings. */
    private static final class Shop {
        private final Map<UUID, DocumentMoves> documents = new HashMap<>();
        private final List<DocumentRef> seals = new ArrayList<>();
        private final List<Posting> sealed = new ArrayList<>();
        private StockMethod method = StockMethod.FIFO;

        List<Posting> books() {
            return laidOver(seals, sealed, result().postings());
        }

        Replay.Result result() {
            return Replay.of(method, documents.values());
        }

        void seal(LocalDate last, Random random) {
            DocumentRef seal =
                    new DocumentRef(new UUID(random.nextLong(), random.nextLong()), DocumentKind.YEAR_SEAL, last);
            List<Posting> kept = upTo(books(), last);
            sealed.clear();
            sealed.addAll(kept);
            seals.add(seal);
            documents.put(seal.id(), new DocumentMoves(seal, List.of()));
        }

        boolean accepts(DocumentMoves document) {
            documents.put(document.document().id(), document);
            if (result().problems().isEmpty()) {
                return true;
            }
            documents.remove(document.document().id());
            return false;
        }

        boolean removes(DocumentMoves document) {
            documents.remove(document.document().id());
            if (result().problems().isEmpty()) {
                return true;
            }
            documents.put(document.document().id(), document);
            return false;
        }
    }

    @Test
    void aThousandLaterEditsLeaveASealedYearAsItWas() {
        int edits = 0;
        int differences = 0;
        for (long seed = 1; seed <= HISTORIES; seed++) {
            Random random = new Random(seed);
            List<DocumentMoves> history = RandomHistory.of(seed, SIZE).documents();
            Shop shop = new Shop();
            shop.method = seed % 2 == 0 ? StockMethod.FIFO : StockMethod.AVERAGE;
            history.stream()
                    .filter(document -> !document.document().date().isAfter(LAST_SEALED))
                    .forEach(document -> shop.documents.put(document.document().id(), document));
            if (seed % 3 == 0) {
                shop.seal(FIRST_SEALED, random);
                shop.method = other(shop.method);
            }
            shop.seal(LAST_SEALED, random);
            List<Posting> sealed = List.copyOf(shop.sealed);
            List<DocumentMoves> later = new ArrayList<>(history.stream()
                    .filter(document -> document.document().date().isAfter(LAST_SEALED))
                    .toList());
            for (int edit = 0; edit < EDITS; edit++) {
                edits += edit(shop, later, random);
                differences += holds(shop, sealed) ? 1 : 0;
            }
        }
        assertThat(edits).as("edits, each an evening of several documents").isGreaterThanOrEqualTo(HISTORIES * EDITS);
        assertThat(differences).as("evenings on which a difference was posted").isGreaterThan(HISTORIES / 4);
    }

    /** Some documents come, one is put right or removed, and now and then the calculation is another one. */
    private static int edit(Shop shop, List<DocumentMoves> later, Random random) {
        Collections.shuffle(later, random);
        int done = 1;
        for (DocumentMoves document : List.copyOf(later.subList(0, later.size() / 2))) {
            if (shop.accepts(document)) {
                later.remove(document);
                done++;
            }
        }
        List<DocumentMoves> open = shop.documents.values().stream()
                .filter(document -> document.document().date().isAfter(LAST_SEALED))
                .toList();
        if (!open.isEmpty()) {
            DocumentMoves one = open.get(random.nextInt(open.size()));
            done += shop.removes(one) ? 1 : 0;
        }
        if (random.nextInt(3) == 0) {
            shop.method = other(shop.method);
            done++;
        }
        return done;
    }

    private static boolean holds(Shop shop, List<Posting> sealed) {
        List<Posting> books = shop.books();
        assertThat(upTo(books, LAST_SEALED)).as("what was sealed").isEqualTo(sealed);
        assertThat(grouped(books).values())
                .as("every document adds to zero")
                .allSatisfy(postings -> assertThat(
                                postings.stream().map(Posting::amount).collect(Amount.sum()))
                        .isEqualTo(Amount.ZERO));
        assertThat(StockCheck.differences(shop.result(), grouped(books)))
                .as("stock and pieces go on from the seal as costing says")
                .isEmpty();
        assertThat(Balances.costNotKept(shop.documents.values().stream().toList(), grouped(books), LocalDate.MIN))
                .as("cost is kept on every day")
                .isEmpty();
        assertThat(stock(books, LAST_SEALED)).as("closing stock").isEqualTo(stock(sealed, LAST_SEALED));
        rebuilt(shop, books);
        DocumentRef seal = shop.seals.get(shop.seals.size() - 1);
        List<Posting> difference = books.stream()
                .filter(posting -> posting.document().id().equals(seal.id()))
                .toList();
        assertThat(difference).allSatisfy(posting -> {
            assertThat(posting.document().date()).isEqualTo(LAST_SEALED.plusDays(1));
            assertThat(posting.tags().origin()).as("the document it corrects").isNotNull();
        });
        return !difference.isEmpty();
    }

    /** In whatever order documents and sealed postings are read. */
    private static void rebuilt(Shop shop, List<Posting> books) {
        List<DocumentMoves> shuffled = new ArrayList<>(shop.documents.values());
        Collections.shuffle(shuffled, new Random(books.size()));
        List<DocumentRef> seals = new ArrayList<>(shop.seals);
        Collections.reverse(seals);
        assertThat(grouped(laidOver(
                        seals, shop.sealed, Replay.of(shop.method, shuffled).postings())))
                .isEqualTo(grouped(books));
    }

    private static Left stock(Collection<Posting> postings, LocalDate day) {
        List<Posting> there = postings.stream()
                .filter(posting -> posting.account().isStock())
                .filter(posting -> !posting.document().date().isAfter(day))
                .toList();
        return new Left(
                there.stream().map(Posting::amount).collect(Amount.sum()),
                there.stream().map(Posting::quantity).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static List<Posting> upTo(List<Posting> postings, LocalDate day) {
        return postings.stream()
                .filter(posting -> !posting.document().date().isAfter(day))
                .toList();
    }

    private static List<Posting> laidOver(Collection<DocumentRef> seals, List<Posting> sealed, List<Posting> derived) {
        return SealedPostings.laidOver(seals, entries(sealed), entries(derived)).stream()
                .map(Entry::posting)
                .toList();
    }

    private static List<Entry> entries(List<Posting> postings) {
        return postings.stream().map(posting -> new Entry(posting, 0, null)).toList();
    }

    private static Map<UUID, List<Posting>> grouped(List<Posting> postings) {
        return HistoryCheck.grouped(postings);
    }

    private static StockMethod other(StockMethod method) {
        return method == StockMethod.FIFO ? StockMethod.AVERAGE : StockMethod.FIFO;
    }
}
