package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.TRAY;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class OrderTest {

    private static final UUID LOW = UUID.fromString("10000000-0000-4000-8000-000000000000");
    /** Negative as Java's signed halves, yet the later of the two as text. */
    private static final UUID HIGH = UUID.fromString("f0000000-0000-4000-8000-000000000000");

    private final Story story = new Story();

    @Test
    void tiesOfOneDayAndKindAreBrokenByTheIdAsText() {
        story.bought(1, "1", 100);
        story.bought(2, "1", 300);
        story.document(HIGH, 3, DocumentKind.BENCH_ENTRY, Story.use("1", false, TRAY));
        story.document(LOW, 3, DocumentKind.BENCH_ENTRY, Story.use("1", false, BOWL));
        assertThat(story.told().on(Account.PIECES, BOWL)).isEqualTo(100);
        assertThat(story.told().on(Account.PIECES, TRAY)).isEqualTo(300);
    }

    @Test
    void dateComesBeforeKindAndKindBeforeId() {
        DocumentRef sale = new DocumentRef(LOW, DocumentKind.SALE, Story.day(1));
        DocumentRef receipt = new DocumentRef(HIGH, DocumentKind.RECEIPT, Story.day(1));
        DocumentRef later = new DocumentRef(LOW, DocumentKind.OPENING, Story.day(2));
        assertThat(List.of(later, sale, receipt).stream().sorted()).containsExactly(receipt, sale, later);
    }

    /** The order is part of the books: opening, receipt, return, taking, bench, count, sale, refund, the rest. */
    @Test
    void kindsOfOneDayAreTakenInTheirStoredOrder() {
        assertThat(List.of(DocumentKind.values()).subList(0, 8))
                .containsExactly(
                        DocumentKind.OPENING,
                        DocumentKind.RECEIPT,
                        DocumentKind.SUPPLIER_RETURN,
                        DocumentKind.TAKING,
                        DocumentKind.BENCH_ENTRY,
                        DocumentKind.COUNT,
                        DocumentKind.SALE,
                        DocumentKind.REFUND);
    }

    @Test
    void unbalancedDocumentIsReported() {
        UUID id = story.document(1, DocumentKind.RECEIPT, Story.in(StockPlace.BENCH, "1", 100, false), Story.paid(99));
        story.bought(2, "1", 100);
        assertThat(story.told().result().problems())
                .containsExactly(new Problem(
                        new DocumentRef(id, DocumentKind.RECEIPT, Story.day(1)), Problem.Reason.UNBALANCED, null));
    }

    @Test
    void fixedPostsAreTakenAsTheyAreAndNothingPostsZero() {
        Tags bank = Tags.place(Story.name("bank"));
        story.document(
                1,
                DocumentKind.EXPENSE,
                new Move.Post(Account.EXPENSE, Tags.category("rent"), Story.cents(700)),
                new Move.Post(Account.ROUNDING, Tags.NONE, Story.cents(0)),
                new Move.Post(Account.MONEY, bank, Story.cents(-700)));
        assertThat(story.told().postings())
                .extracting(Posting::account, Posting::tags, Posting::amount)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Account.EXPENSE, Tags.category("rent"), Story.cents(700)),
                        org.assertj.core.groups.Tuple.tuple(Account.MONEY, bank, Story.cents(-700)));
    }

    @Test
    void equalQuantitiesMakeEqualPostings() {
        DocumentRef ref = new DocumentRef(LOW, DocumentKind.RECEIPT, Story.day(1));
        Posting one = new Posting(ref, Account.BENCH, Tags.NONE, Story.cents(1), Story.quantity("10.00"));
        Posting other = new Posting(ref, Account.BENCH, Tags.NONE, Story.cents(1), Story.quantity("1E+1"));
        assertThat(one).isEqualTo(other);
    }

    /** Stays here because no story can bring a lot of nothing: documents refuse it before. */
    @Test
    void lotOfNothingIsRefused() {
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> new Lot(Story.quantity("0"), Story.cents(1), false));
    }
}
