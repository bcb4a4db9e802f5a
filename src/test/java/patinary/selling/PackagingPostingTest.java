package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import patinary.ledger.Account;
import patinary.ledger.DocumentKind;
import patinary.ledger.DocumentMoves;
import patinary.ledger.DocumentRef;
import patinary.ledger.Move;
import patinary.ledger.Posting;
import patinary.ledger.Replay;
import patinary.ledger.StockMethod;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** What a sale was packed in, as the table of docs/handbook/posting-rules-selling.md has it; worked by hand. */
class PackagingPostingTest {

    private static final UUID SALE = new UUID(7, 7);
    private static final UUID LATER = new UUID(9, 9);
    private static final LocalDate BEFORE = WorkedSale.DAY.minusDays(9);
    private static final LocalDate AFTER = WorkedSale.DAY.plusDays(9);

    private final List<DocumentMoves> documents = new ArrayList<>();

    /** Ten boxes for 12.00, a hundred sheets for 9.00, 50 m of tape for 4.00: 1.20 + 0.27 + 0.08 = 1.55. */
    @ParameterizedTest
    @EnumSource(StockMethod.class)
    void leavesTheBenchAtLotCost(StockMethod method) {
        bought(BEFORE, WorkedSale.BOX, 10, 1200);
        bought(BEFORE, WorkedSale.TISSUE, 100, 900);
        bought(BEFORE, WorkedSale.TAPE, 5000, 400);
        sold();
        Replay.Result result = Replay.of(method, documents);
        assertThat(spent(result, SALE))
                .containsOnly(entry(WorkedSale.BOX, 120L), entry(WorkedSale.TISSUE, 27L), entry(WorkedSale.TAPE, 8L));
        assertThat(result.postings())
                .filteredOn(posting -> posting.account() == Account.BENCH)
                .filteredOn(posting -> posting.document().id().equals(SALE))
                .extracting(
                        posting -> posting.tags().supply(),
                        posting -> posting.amount().minor(),
                        Posting::quantity)
                .contains(
                        tuple(WorkedSale.BOX, -120L, BigDecimal.ZERO),
                        tuple(WorkedSale.TISSUE, -27L, BigDecimal.ZERO),
                        tuple(WorkedSale.TAPE, -8L, BigDecimal.ZERO))
                .contains(tuple(WorkedSale.BOX, 0L, BigDecimal.ONE.negate()));
    }

    /** It is a cost of selling: nothing of it on postage, nor on what the goods cost. */
    @Test
    void isAnExpenseOfItsOwnCategoryAndNothingElse() {
        bought(BEFORE, WorkedSale.BOX, 10, 1200);
        sold();
        List<Posting> with = Replay.of(StockMethod.FIFO, documents).postings();
        assertThat(with)
                .filteredOn(posting -> posting.account() == Account.EXPENSE)
                .singleElement()
                .satisfies(posting -> assertThat(posting.tags().category()).isEqualTo("packaging"));
        assertThat(with).noneMatch(posting -> posting.account() == Account.POSTAGE);
        assertThat(with)
                .filteredOn(posting -> posting.account() == Account.COST_OF_RETAIL)
                .allMatch(posting -> posting.amount().isZero());
    }

    /** Twelve boxes bought nine days later for 15.00: 1.25, on the receipt's day, and it names the sale. */
    @Test
    void usedBeforeItsReceiptIsCostedByIt() {
        sold();
        assertThat(Replay.of(StockMethod.FIFO, documents).uncosted())
                .extracting(Replay.Uncosted::supply)
                .contains(WorkedSale.BOX, WorkedSale.TISSUE, WorkedSale.TAPE);
        bought(AFTER, WorkedSale.BOX, 12, 1500);
        Replay.Result result = Replay.of(StockMethod.FIFO, documents);
        assertThat(spent(result, SALE)).containsOnly(entry(WorkedSale.BOX, 125L));
        assertThat(result.postings())
                .filteredOn(posting -> posting.account() == Account.EXPENSE)
                .singleElement()
                .satisfies(posting -> {
                    assertThat(posting.document().date()).isEqualTo(AFTER);
                    assertThat(posting.tags().origin()).isEqualTo(SALE);
                });
    }

    /** The books have 49 m of tape, 45 are there: the 4 m were used by eye too, 0.32 more. A box counted short is lost. */
    @Test
    void aCountCorrectsOnlyWhatWasJudgedByEye() {
        bought(BEFORE, WorkedSale.BOX, 10, 1200);
        bought(BEFORE, WorkedSale.TAPE, 5000, 400);
        sold();
        document(LATER, DocumentKind.COUNT, AFTER, new Move.Counted(WorkedSale.TAPE, StockPlace.BENCH, of(4500)));
        document(new UUID(9, 8), DocumentKind.COUNT, AFTER, new Move.Counted(WorkedSale.BOX, StockPlace.BENCH, of(8)));
        Replay.Result result = Replay.of(StockMethod.FIFO, documents);
        assertThat(spent(result, SALE)).containsEntry(WorkedSale.TAPE, 40L).containsEntry(WorkedSale.BOX, 120L);
        assertThat(result.postings())
                .filteredOn(posting -> posting.account() == Account.WRITE_OFFS)
                .singleElement()
                .satisfies(posting -> assertThat(posting.amount()).isEqualTo(Amount.of(120)));
    }

    /** The parcel that was sent back came in its box, which is gone; the brush of the same sale comes back. */
    @Test
    void staysSpentWhereTheSaleIsRefunded() {
        bought(BEFORE, WorkedSale.BOX, 10, 1200);
        document(
                new UUID(1, 5),
                DocumentKind.RECEIPT,
                BEFORE,
                new Move.SupplyIn(WorkedSale.BRUSHES, StockPlace.SHELF, of(10), Amount.of(2000), false),
                new Move.Post(Account.MONEY, Tags.NONE, Amount.of(-2000)));
        sold();
        document(
                LATER,
                DocumentKind.REFUND,
                AFTER,
                new Move.SupplyBack(WorkedSale.BRUSHES, StockPlace.SHELF, of(3), SALE),
                new Move.PieceBack(WorkedSale.TRAY, SALE));
        Replay.Result result = Replay.of(StockMethod.FIFO, documents);
        assertThat(result.problems()).isEmpty();
        assertThat(spent(result, SALE)).containsEntry(WorkedSale.BOX, 120L);
        assertThat(left(result, WorkedSale.BOX)).isEqualByComparingTo("9");
        assertThat(left(result, WorkedSale.BRUSHES)).isEqualByComparingTo("10");
    }

    private void sold() {
        documents.add(new DocumentMoves(
                new DocumentRef(SALE, DocumentKind.SALE, WorkedSale.DAY), SalePosting.moves(WorkedSale.packed())));
    }

    private void bought(LocalDate day, UUID supply, int quantity, long cents) {
        document(
                new UUID(1, documents.size()),
                DocumentKind.RECEIPT,
                day,
                new Move.SupplyIn(supply, StockPlace.BENCH, of(quantity), Amount.of(cents), false),
                new Move.Post(Account.MONEY, Tags.NONE, Amount.of(-cents)));
    }

    private void document(UUID id, DocumentKind kind, LocalDate day, Move... moves) {
        documents.add(new DocumentMoves(new DocumentRef(id, kind, day), List.of(moves)));
    }

    /** What was spent on packing a sale, by supply, whatever document posts it. */
    private static Map<UUID, Long> spent(Replay.Result result, UUID sale) {
        Map<UUID, Long> sums = new TreeMap<>();
        for (Posting posting : result.postings()) {
            UUID origin = posting.tags().origin() == null
                    ? posting.document().id()
                    : posting.tags().origin();
            if (posting.account() == Account.EXPENSE && sale.equals(origin)) {
                sums.merge(posting.tags().supply(), posting.amount().minor(), Long::sum);
            }
        }
        return sums;
    }

    private static BigDecimal left(Replay.Result result, UUID supply) {
        return result.stock().stream()
                .filter(stock -> stock.supply().equals(supply))
                .map(Replay.StockLeft::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal of(long whole) {
        return BigDecimal.valueOf(whole);
    }
}
