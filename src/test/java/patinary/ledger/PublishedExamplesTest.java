package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.TRAY;

import org.junit.jupiter.api.Test;
import patinary.ledger.Story.Told;

/** Published perpetual examples, with costs in whole units of money as printed. "Derived" means worked out from them. */
class PublishedExamplesTest {

    /** College financial accounting text, problem 6-1A with its solution sheet. */
    private static Story problemSixOneA() {
        Story story = new Story();
        story.bought(1, "100", 5_000);
        story.bought(5, "400", 22_000);
        story.used(9, "420", BOWL);
        story.bought(18, "120", 7_200);
        story.bought(25, "200", 12_400);
        story.used(29, "160", TRAY);
        return story;
    }

    /** Textbook illustration with whole-number averages, August purchases and sales. */
    private static Story wholeNumberAverages() {
        Story story = new Story();
        story.bought(1, "10", 910);
        story.bought(3, "15", 1_590);
        story.used(14, "20", BOWL);
        story.bought(17, "20", 2_300);
        story.bought(28, "10", 1_190);
        story.used(31, "23", TRAY);
        return story;
    }

    @Test
    void firstInFirstOutAgreesWithProblemSixOneA() {
        Told told = problemSixOneA().told(StockMethod.FIFO);
        assertThat(told.on(Account.PIECES, BOWL)).as("9 March, read").isEqualTo(22_600);
        assertThat(told.on(Account.PIECES, TRAY)).as("29 March, read").isEqualTo(9_200);
        assertThat(told.cost(StockPlace.BENCH)).as("ending, read").isEqualTo(14_800);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("240");
    }

    @Test
    void movingAverageAgreesWithProblemSixOneA() {
        Told told = problemSixOneA().told(StockMethod.AVERAGE);
        assertThat(told.on(Account.PIECES, BOWL)).as("420 at 54.00, read").isEqualTo(22_680);
        assertThat(told.on(Account.PIECES, TRAY)).as("160 at 59.80, derived").isEqualTo(9_568);
        assertThat(told.cost(StockPlace.BENCH)).as("ending, derived").isEqualTo(14_352);
    }

    @Test
    void firstInFirstOutAgreesWithTheAugustIllustration() {
        Told told = wholeNumberAverages().told(StockMethod.FIFO);
        assertThat(told.on(Account.PIECES, BOWL)).as("14 August, read").isEqualTo(1_970);
        assertThat(told.on(Account.PIECES, TRAY)).as("31 August, read").isEqualTo(2_600);
        assertThat(told.cost(StockPlace.BENCH)).as("ending, read").isEqualTo(1_420);
    }

    @Test
    void movingAverageAgreesWithTheAugustIllustration() {
        Told told = wholeNumberAverages().told(StockMethod.AVERAGE);
        assertThat(told.on(Account.PIECES, BOWL)).as("20 at 100, derived").isEqualTo(2_000);
        assertThat(told.on(Account.PIECES, TRAY)).as("23 at 114, derived").isEqualTo(2_622);
        assertThat(told.cost(StockPlace.BENCH)).as("12 at 114, derived").isEqualTo(1_368);
    }

    /** Short published check: the new average is 9.50 and 220 are left at 2,090. */
    @Test
    void movingAverageAgreesWithTheShortCheck() {
        Story story = new Story();
        story.bought(1, "300", 2_400);
        story.used(2, "175", BOWL);
        story.bought(3, "375", 3_750);
        story.used(4, "280", TRAY);
        Told told = story.told(StockMethod.AVERAGE);
        assertThat(told.on(Account.PIECES, BOWL)).as("175 at 8, derived").isEqualTo(1_400);
        assertThat(told.on(Account.PIECES, TRAY)).as("280 at 9.50, read").isEqualTo(2_660);
        assertThat(told.cost(StockPlace.BENCH)).as("left, read").isEqualTo(2_090);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("220");
    }
}
