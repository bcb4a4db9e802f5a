package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.StockPlace.BENCH;
import static patinary.ledger.StockPlace.SHELF;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.TRAY;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import patinary.ledger.Story.Told;

class RetailTest {

    private final Story story = new Story();

    @Test
    void takingMovesQuantityAndCostFromShelfToBench() {
        story.bought(1, SHELF, "10", 1_000);
        story.taken(2, "3");
        story.used(3, "1", BOWL);
        Told told = story.told();
        assertThat(told.quantity(SHELF)).isEqualByComparingTo("7");
        assertThat(told.cost(SHELF)).isEqualTo(700);
        assertThat(told.quantity(BENCH)).isEqualByComparingTo("2");
        assertThat(told.cost(BENCH)).isEqualTo(200);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(100);
    }

    /** The bench has what the shelf had; the rest, and the uses that wait for it, get their cost with the receipt. */
    @Test
    void takingFromAShortShelfReachesTheBenchWithTheReceipt() {
        story.bought(1, SHELF, "1", 100);
        UUID taking = story.taken(2, "3");
        UUID use = story.used(3, "2", BOWL);
        Told before = story.told();
        assertThat(before.on(Account.PIECES, BOWL)).isEqualTo(100);
        assertThat(before.quantity(SHELF)).isEqualByComparingTo("-2");
        UUID receipt = story.bought(4, SHELF, "5", 1_000);
        Told told = story.told();
        assertThat(told.on(4, Account.PIECES)).isEqualTo(200);
        assertThat(told.cost(SHELF)).isEqualTo(600);
        assertThat(told.cost(BENCH)).isEqualTo(200);
        assertThat(told.quantity(BENCH)).isEqualByComparingTo("1");
        assertThat(told.postings()
                        .filter(p -> p.document().id().equals(receipt))
                        .map(p -> p.tags().origin()))
                .contains(taking, use);
    }

    /** The shelf held more than the books knew: the count finds it, and what was taken reaches the bench. */
    @Test
    void countOfTheShelfSettlesATakingThatWaits() {
        story.bought(1, SHELF, "1", 100);
        UUID taking = story.taken(2, "3");
        story.document(3, DocumentKind.COUNT, new Move.Counted(Story.PAINT, SHELF, Story.quantity("0")));
        Told told = story.told();
        assertThat(told.on(Account.FOUND_AT_COUNT)).isEqualTo(-200);
        assertThat(told.cost(BENCH)).isEqualTo(300);
        assertThat(told.quantity(BENCH)).isEqualByComparingTo("3");
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.postings().map(p -> p.tags().origin())).contains(taking);
    }

    @Test
    void estimatedTakingMarksWhatReachesTheBenchButIsNoUseForACount() {
        story.bought(1, SHELF, "10", 1_000);
        story.document(2, DocumentKind.TAKING, Story.out(SHELF, "4", true, new Move.Destination.Place(BENCH)));
        story.document(3, DocumentKind.COUNT, new Move.Counted(Story.PAINT, SHELF, Story.quantity("5")));
        Told told = story.told();
        assertThat(told.estimatedOn(Account.BENCH)).isEqualTo(400);
        assertThat(told.on(Account.WRITE_OFFS)).isEqualTo(100);
    }

    @Test
    void retailSoldIsCostOfRetail() {
        story.bought(1, SHELF, "10", 1_000);
        story.soldRetail(2, "4");
        Told told = story.told();
        assertThat(told.on(Account.COST_OF_RETAIL)).isEqualTo(400);
        assertThat(told.quantity(SHELF)).isEqualByComparingTo("6");
    }

    @ParameterizedTest
    @EnumSource
    void retailComesBackAtTheCostItWasSoldAt(StockMethod method) {
        story.bought(1, SHELF, "4", 400);
        UUID sale = story.soldRetail(2, "4");
        story.bought(3, SHELF, "4", 800);
        story.cameBack(4, "1", sale);
        Told told = story.told(method);
        assertThat(told.on(4, Account.COST_OF_RETAIL)).isEqualTo(-100);
        assertThat(told.on(Account.COST_OF_RETAIL)).isEqualTo(300);
        assertThat(told.cost(SHELF)).isEqualTo(900);
        assertThat(told.quantity(SHELF)).isEqualByComparingTo("5");
    }

    /** The latest line of the sale comes back first. */
    @Test
    void partOfASaleOfTwoLinesComesBackLatestFirst() {
        story.bought(1, SHELF, "1", 100);
        story.bought(1, SHELF, "1", 300);
        Move.Destination cost = new Move.Destination.To(Account.COST_OF_RETAIL, Tags.NONE);
        UUID sale = story.document(
                2, DocumentKind.SALE, Story.out(SHELF, "1", false, cost), Story.out(SHELF, "1", false, cost));
        story.cameBack(3, "1", sale);
        assertThat(story.told().on(Account.COST_OF_RETAIL)).isEqualTo(100);
    }

    @Test
    void whatWaitedForItsCostComesBackWithoutOne() {
        UUID sale = story.soldRetail(1, "2");
        story.cameBack(2, "2", sale);
        story.bought(3, SHELF, "5", 500);
        Told told = story.told();
        assertThat(told.on(Account.COST_OF_RETAIL)).isZero();
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.quantity(SHELF)).isEqualByComparingTo("5");
        assertThat(told.cost(SHELF)).isEqualTo(500);
    }

    @Test
    void whatCameBackServesASaleThatWaits() {
        story.bought(1, SHELF, "2", 200);
        UUID first = story.soldRetail(2, "2");
        UUID second = story.soldRetail(3, "1");
        story.cameBack(4, "1", first);
        Told told = story.told();
        assertThat(told.on(Account.COST_OF_RETAIL)).isEqualTo(200);
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.postings().map(p -> p.tags().origin())).contains(first, second);
    }

    @Test
    void moreBackThanSoldIsRefused() {
        story.bought(1, SHELF, "5", 500);
        UUID sale = story.soldRetail(2, "2");
        story.cameBack(3, "1.5", sale);
        assertThat(story.told().problems()).isEmpty();
        story.cameBack(4, "1", sale);
        assertThat(story.told().problems()).containsExactly(Problem.Reason.MORE_BACK_THAN_SOLD);
        assertThat(story.told().on(Account.COST_OF_RETAIL)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void knownPriceStaysKnownWhenRetailComesBack(StockMethod method) {
        story.bought(1, SHELF, "2", 200);
        UUID sale = story.soldRetail(2, "2");
        story.cameBack(3, "1", sale);
        story.taken(4, "1");
        story.used(5, "1", TRAY);
        assertThat(story.told(method).estimatedOn(Account.PIECES)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void rememberedPriceStaysMarkedWhenRetailComesBack(StockMethod method) {
        story.document(1, DocumentKind.OPENING, Story.in(SHELF, "2", 200, true), Story.paid(200));
        UUID sale = story.soldRetail(2, "2");
        story.cameBack(3, "1", sale);
        story.taken(4, "1");
        story.used(5, "1", TRAY);
        Told told = story.told(method);
        assertThat(told.estimatedOn(Account.COST_OF_RETAIL)).isEqualTo(100);
        assertThat(told.on(Account.COST_OF_RETAIL)).isEqualTo(100);
        assertThat(told.estimatedOn(Account.PIECES)).isEqualTo(100);
    }
}
