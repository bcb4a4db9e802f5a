package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.TRAY;
import static patinary.ledger.Story.VASE;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import patinary.ledger.Move.Destination;
import patinary.ledger.Story.Told;

class CountsTest {

    private final Story story = new Story();

    /** Books say 4 of 10 are left and 1 is there: 3 more were used, shared 2 to 1 as the estimates stand. */
    @ParameterizedTest
    @EnumSource
    void shortCountAddsToEstimatedUsesInProportion(StockMethod method) {
        story.bought(1, "10", 1_000);
        UUID first = story.usedAbout(2, "4", BOWL);
        story.usedAbout(3, "2", TRAY);
        UUID count = story.counted(4, "1");
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(600);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(300);
        assertThat(told.on(4, Account.PIECES)).isEqualTo(300);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("1");
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(100);
        assertThat(told.postings()
                        .filter(p -> p.document().id().equals(count)
                                && BOWL.equals(p.tags().piece())))
                .allMatch(p -> first.equals(p.tags().origin()) && p.tags().estimated());
    }

    @ParameterizedTest
    @EnumSource
    void longCountTakesFromEstimatedUsesInProportion(StockMethod method) {
        story.bought(1, "10", 1_000);
        story.usedAbout(2, "4", BOWL);
        story.usedAbout(3, "2", TRAY);
        story.counted(4, "7");
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(200);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(100);
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(700);
        assertThat(told.on(Account.FOUND_AT_COUNT)).isZero();
    }

    @Test
    void countThatAgreesPostsNothing() {
        story.bought(1, "10", 1_000);
        story.usedAbout(2, "4", BOWL);
        UUID count = story.counted(3, "6.0");
        assertThat(story.told().postings().filter(p -> p.document().id().equals(count)))
                .isEmpty();
    }

    @Test
    void exactUsesAreLeftAlone() {
        story.bought(1, "10", 1_000);
        story.used(2, "4", BOWL);
        story.usedAbout(3, "2", TRAY);
        story.counted(4, "3");
        Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(400);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(300);
    }

    @Test
    void shortCountWithoutEstimatedUsesIsWrittenOff() {
        story.bought(1, "10", 1_000);
        story.used(2, "4", BOWL);
        story.counted(3, "5");
        Told told = story.told();
        assertThat(told.on(3, Account.WRITE_OFFS)).isEqualTo(100);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(400);
        assertThat(told.postings().filter(p -> p.account() == Account.WRITE_OFFS))
                .allMatch(p -> "count".equals(p.tags().category())
                        && Story.PAINT.equals(p.tags().supply()));
    }

    @Test
    void writeOffOfARememberedPriceSaysSo() {
        story.boughtAtAbout(1, "10", 1_000);
        story.counted(3, "5");
        assertThat(story.told().estimatedOn(Account.WRITE_OFFS)).isEqualTo(500);
    }

    /** 6 used of 4 bought: a count of 1 says that 3 were used, which leaves nothing waiting. */
    @ParameterizedTest
    @EnumSource
    void countTakesWhatWaitsBeforeWhatHasACost(StockMethod method) {
        story.bought(1, "4", 400);
        story.usedAbout(2, "6", BOWL);
        story.counted(3, "1");
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(300);
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(100);
        assertThat(told.on(Account.FOUND_AT_COUNT)).isZero();
    }

    /** Proportions run over waiting and costed uses alike; what comes back costs the exact use that waits. */
    @Test
    void whatACountGivesBackServesAnExactUseThatWaits() {
        story.bought(1, "4", 400);
        story.usedAbout(2, "4", BOWL);
        story.used(3, "2", TRAY);
        story.counted(4, "0");
        Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(200);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(200);
        assertThat(told.result().uncosted()).isEmpty();
    }

    @Test
    void differenceOnSoldPiecesIsCostOfPiecesOnTheDateOfTheCount() {
        story.bought(1, "10", 1_000);
        story.usedAbout(2, "2", BOWL);
        story.usedAbout(2, "2", TRAY);
        story.sold(3, BOWL);
        story.counted(5, "4");
        Told told = story.told();
        assertThat(told.on(3, Account.COST_OF_PIECES)).isEqualTo(200);
        assertThat(told.on(5, Account.COST_OF_PIECES)).isEqualTo(100);
        assertThat(told.on(5, Account.PIECES)).isEqualTo(100);
    }

    @Test
    void differenceOnAPieceGivenAwayFollowsItThere() {
        story.bought(1, "10", 1_000);
        story.usedAbout(2, "2", BOWL);
        story.letGo(3, BOWL, Account.OWN_USE);
        story.counted(5, "9");
        assertThat(story.told().on(5, Account.OWN_USE)).isEqualTo(-100);
    }

    @ParameterizedTest
    @EnumSource
    void secondCountTouchesOnlyUsesSinceTheFirst(StockMethod method) {
        story.bought(1, "10", 1_000);
        story.usedAbout(2, "2", BOWL);
        story.counted(3, "8");
        story.usedAbout(4, "2", TRAY);
        story.counted(5, "4");
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(200);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(400);
    }

    /** What was never used is the next to go out, so first in, first out keeps its order. */
    @Test
    void whatComesBackGoesOutBeforeNewerLots() {
        story.bought(1, "2", 200);
        story.usedAbout(2, "2", BOWL);
        story.bought(3, "2", 600);
        story.counted(4, "3");
        story.used(5, "1", TRAY);
        assertThat(story.told().on(Account.PIECES, TRAY)).isEqualTo(100);
    }

    @Test
    void priceThatIsKnownStaysKnownWhenItComesBack() {
        story.bought(1, "2", 200);
        story.usedAbout(2, "2", BOWL);
        story.counted(3, "1");
        story.used(4, "1", TRAY);
        assertThat(story.told().postings().filter(p -> TRAY.equals(p.tags().piece())))
                .isNotEmpty()
                .noneMatch(p -> p.tags().estimated());
    }

    /** A use taken to zero takes its cost from each of its pieces to zero, to the cent. */
    @Test
    void useCostedInPartsAndTakenBackLeavesNoCentBehind() {
        story.usedAbout(1, "2", BOWL, TRAY, VASE);
        story.bought(2, "1", 1);
        story.bought(3, "1", 1);
        story.counted(4, "2");
        Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isZero();
        assertThat(told.on(Account.PIECES, TRAY)).isZero();
        assertThat(told.on(Account.PIECES, VASE)).isZero();
    }

    @Test
    void estimatedUseOnAnAccountIsCorrectedThere() {
        story.bought(1, "10", 1_000);
        story.document(
                2,
                DocumentKind.BENCH_ENTRY,
                Story.out(StockPlace.BENCH, "4", true, new Destination.To(Account.EXPENSE, Tags.category("trials"))));
        story.counted(3, "8");
        Told told = story.told();
        assertThat(told.on(Account.EXPENSE)).isEqualTo(200);
        assertThat(told.estimatedOn(Account.EXPENSE)).isEqualTo(200);
        assertThat(told.postings().filter(p -> p.account() == Account.EXPENSE))
                .allMatch(p -> "trials".equals(p.tags().category()));
    }

    /** 100 for 10.00, 20 by eye, 10 missing at the count: as waste they are written off and the bowl bears its 20 alone. */
    @ParameterizedTest
    @EnumSource(StockMethod.class)
    void whatWasWastedIsWrittenOffAndNoUseBearsIt(StockMethod method) {
        Story story = new Story();
        story.bought(1, "100", 1_000);
        story.usedAbout(2, "20", BOWL);
        story.countedAsWaste(3, "70");
        Story.Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(200);
        assertThat(told.on(Account.WRITE_OFFS)).isEqualTo(100);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("70");
    }

    /** More there than noted cannot be waste: the uses give it back as ever. */
    @ParameterizedTest
    @EnumSource(StockMethod.class)
    void moreThanNotedIsGivenBackAlsoWhereItWasCalledWaste(StockMethod method) {
        Story story = new Story();
        story.bought(1, "100", 1_000);
        story.usedAbout(2, "20", BOWL);
        story.countedAsWaste(3, "90");
        Story.Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(100);
        assertThat(told.on(Account.WRITE_OFFS)).isZero();
    }
}
