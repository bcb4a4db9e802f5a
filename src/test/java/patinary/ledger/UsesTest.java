package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.PAINT;
import static patinary.ledger.Story.TRAY;
import static patinary.ledger.Story.VASE;
import static patinary.ledger.Story.cents;
import static patinary.ledger.Story.quantity;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import patinary.ledger.Story.Told;

class UsesTest {

    private final Story story = new Story();

    /** 10.00 over 3: the running totals are 3.33, 6.67 and 10.00, so the uses cost 3.33, 3.34 and 3.33. */
    @ParameterizedTest
    @EnumSource
    void usedUpLotGivesOutExactlyItsCost(StockMethod method) {
        story.bought(1, "3", 1_000);
        story.used(2, "1", BOWL);
        story.used(3, "1", TRAY);
        story.used(4, "1", VASE);
        Told told = story.told(method);
        assertThat(List.of(told.on(Account.PIECES, BOWL), told.on(Account.PIECES, TRAY), told.on(Account.PIECES, VASE)))
                .containsExactly(333L, 334L, 333L);
        assertThat(told.cost(StockPlace.BENCH)).isZero();
    }

    /** Rounding each use by itself would make 1000 uses of 0.04 cents cost nothing. */
    @Test
    void manySmallUsesCostWhatTheyTakeTogether() {
        story.bought(1, "1000", 40);
        for (int i = 0; i < 500; i++) {
            story.used(2, "1", BOWL);
        }
        assertThat(story.told().on(Account.PIECES, BOWL)).isEqualTo(20);
    }

    @Test
    void useAcrossTwoLotsTakesTheOlderFirst() {
        story.bought(1, "2", 200);
        story.bought(2, "2", 600);
        story.used(3, "3", BOWL);
        assertThat(story.told().on(Account.PIECES, BOWL)).isEqualTo(500);
        assertThat(story.told(StockMethod.AVERAGE).on(Account.PIECES, BOWL)).isEqualTo(600);
    }

    /** 1.00 over three pieces: the cent left over goes to the first of the equal remainders. */
    @Test
    void sharesOfAUseAddToTheUse() {
        story.bought(1, "1", 100);
        story.used(2, "1", BOWL, TRAY, VASE);
        Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(34);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(33);
        assertThat(told.on(Account.PIECES, VASE)).isEqualTo(33);
    }

    @Test
    void tiesBetweenPiecesAreSettledByTheirIdsNotByTheOrderOfTyping() {
        story.bought(1, "1", 100);
        story.used(2, "1", VASE, TRAY, BOWL);
        assertThat(story.told().on(Account.PIECES, BOWL)).isEqualTo(34);
        story.regrouped(3, List.of(BOWL), Story.share(VASE, "1"), Story.share(TRAY, "1"));
        story.boughtPiece(4, BOWL, 1);
        assertThat(story.told().on(4, Account.PIECES)).isEqualTo(1);
        assertThat(story.told().on(Account.PIECES, TRAY)).isEqualTo(33 + 17 + 1);
    }

    @Test
    void useBeforeItsReceiptMovesTheQuantityAtOnceAndTheCostLater() {
        var use = story.used(2, "4", BOWL);
        assertThat(story.told().quantity(StockPlace.BENCH)).isEqualByComparingTo("-4");
        assertThat(story.told().result().uncosted())
                .containsExactly(new Replay.Uncosted(
                        new DocumentRef(use, DocumentKind.BENCH_ENTRY, Story.day(2)),
                        PAINT,
                        StockPlace.BENCH,
                        quantity("4"),
                        false));
        var receipt = story.bought(5, "10", 1_000);
        Told told = story.told();
        assertThat(told.on(2, Account.PIECES)).isZero();
        assertThat(told.of(receipt, Account.PIECES)).isEqualTo(400);
        assertThat(told.postings().filter(p -> p.account() == Account.PIECES))
                .allMatch(p ->
                        use.equals(p.tags().origin()) && PAINT.equals(p.tags().supply()));
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("6");
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(600);
    }

    @Test
    void useThatIsPartlyThereTakesTheRestFromTheNextReceipt() {
        story.bought(1, "1", 100);
        story.used(2, "4", BOWL);
        Told before = story.told();
        assertThat(before.on(Account.PIECES)).isEqualTo(100);
        assertThat(before.result().uncosted())
                .extracting(Replay.Uncosted::quantity)
                .containsExactly(quantity("3"));
        story.bought(3, "2", 400);
        story.bought(4, "2", 1_000);
        Told told = story.told();
        assertThat(told.on(Account.PIECES)).isEqualTo(100 + 400 + 500);
        assertThat(told.on(4, Account.PIECES)).isEqualTo(500);
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(500);
    }

    @Test
    void waitingUsesAreServedInTheirOrder() {
        story.used(1, "2", BOWL);
        story.used(2, "2", TRAY);
        story.bought(3, "3", 300);
        Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(200);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(100);
    }

    /** The order in which documents were typed in plays no part. */
    @Test
    void receiptTypedLaterButDatedEarlierCostsTheUseOnItsOwnDate() {
        var use = story.used(5, "1", BOWL);
        story.bought(2, "4", 400);
        Told told = story.told();
        assertThat(told.of(use, Account.PIECES)).isEqualTo(100);
        assertThat(told.on(5, Account.PIECES)).isEqualTo(100);
        assertThat(told.postings().map(p -> p.document().date())).isSorted();
    }

    /** Of one day, what was bought can be used. */
    @Test
    void receiptComesBeforeAUseOfItsDay() {
        var use = story.used(3, "1", BOWL);
        story.bought(3, "1", 250);
        assertThat(story.told().of(use, Account.PIECES)).isEqualTo(250);
    }

    @Test
    void costThatArrivesAfterTheSaleGoesToCostOfPieces() {
        story.boughtPiece(1, BOWL, 500);
        story.used(2, "1", BOWL);
        story.sold(3, BOWL);
        story.bought(4, "2", 300);
        Told told = story.told();
        assertThat(told.on(3, Account.COST_OF_PIECES)).isEqualTo(500);
        assertThat(told.on(4, Account.COST_OF_PIECES)).isEqualTo(150);
        assertThat(told.on(Account.PIECES)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void estimatedMarksAreCarriedThrough(StockMethod method) {
        story.boughtAtAbout(1, "2", 200);
        story.used(2, "1", BOWL);
        story.sold(3, BOWL);
        Told told = story.told(method);
        assertThat(told.on(Account.COST_OF_PIECES)).isEqualTo(100);
        assertThat(told.estimatedOn(Account.COST_OF_PIECES)).isEqualTo(100);
        assertThat(told.estimatedOn(Account.BENCH)).isEqualTo(100);
        assertThat(told.estimatedOn(Account.MONEY)).isZero();
    }

    /** First in, first out knows the lots apart; in a pool they cannot be told from one another. */
    @Test
    void oneRememberedPriceMarksTheWholePool() {
        story.boughtAtAbout(1, "2", 200);
        story.bought(2, "2", 200);
        story.used(3, "2", BOWL);
        story.used(4, "1", TRAY);
        Told lots = story.told(StockMethod.FIFO);
        assertThat(lots.estimatedOn(Account.PIECES)).isEqualTo(200);
        assertThat(lots.on(Account.PIECES)).isEqualTo(300);
        assertThat(story.told(StockMethod.AVERAGE).estimatedOn(Account.PIECES)).isEqualTo(300);
    }

    @Test
    void estimatedAndExactCostOfAPieceStayApart() {
        story.boughtPiece(1, BOWL, 500);
        story.bought(1, "2", 200);
        story.usedAbout(2, "1", BOWL);
        story.sold(3, BOWL);
        story.returned(4, BOWL);
        Told told = story.told();
        assertThat(told.on(3, Account.COST_OF_PIECES)).isEqualTo(600);
        assertThat(told.estimatedOn(Account.PIECES)).isEqualTo(100);
        assertThat(told.on(Account.PIECES)).isEqualTo(600);
        assertThat(told.estimatedOn(Account.COST_OF_PIECES)).isZero();
    }

    /** A use in two parts shares its whole cost as one use would: the cent does not go to the same piece twice. */
    @Test
    void useCostedInPartsIsSharedAsAWhole() {
        story.used(1, "2", BOWL, TRAY);
        story.bought(2, "1", 101);
        story.bought(3, "1", 101);
        Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(101);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(101);
    }

    @Test
    void landedCostInStockIsReportedByPiece() {
        story.boughtPiece(1, BOWL, 500);
        story.boughtPiece(1, TRAY, 300);
        story.sold(2, TRAY);
        assertThat(story.told().result().pieces()).containsOnly(java.util.Map.entry(BOWL, cents(500)));
    }
}
