package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import patinary.ledger.Story.Told;

/** Counts that no estimated use explains, or none in full. */
class FindsTest {

    private final Story story = new Story();

    /** First in, first out values what is found at the latest lot's cost, the moving average at the average. */
    @Test
    void longCountWithoutEstimatedUsesIsFound() {
        story.bought(1, "1", 100);
        story.bought(1, "1", 300);
        story.counted(2, "3");
        assertThat(story.told().on(2, Account.FOUND_AT_COUNT)).isEqualTo(-300);
        assertThat(story.told().cost(StockPlace.BENCH)).isEqualTo(700);
        assertThat(story.told(StockMethod.AVERAGE).on(2, Account.FOUND_AT_COUNT))
                .isEqualTo(-200);
        assertThat(story.told().estimatedOn(Account.FOUND_AT_COUNT)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void whatIsFoundInAnEmptyStockIsWorthTheLatestPrice(StockMethod method) {
        story.bought(1, "2", 200);
        story.used(2, "2", BOWL);
        story.counted(3, "1");
        assertThat(story.told(method).cost(StockPlace.BENCH)).isEqualTo(100);
    }

    @Test
    void whatWasNeverBoughtIsFoundAtNoCost() {
        story.counted(3, "5");
        Told told = story.told();
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("5");
        assertThat(told.cost(StockPlace.BENCH)).isZero();
    }

    /** A find too small for a cent must not make later finds of the same supply worth nothing. */
    @Test
    void smallFindDoesNotBecomeThePriceOfTheNext() {
        story.bought(1, "100", 100);
        story.counted(2, "100.4");
        story.counted(3, "200.4");
        assertThat(story.told().on(3, Account.FOUND_AT_COUNT)).isEqualTo(-100);
    }

    @ParameterizedTest
    @EnumSource
    void countBeyondAllUsesTakesThemToZeroAndFindsTheRest(StockMethod method) {
        story.bought(1, "10", 1_000);
        story.usedAbout(2, "4", BOWL);
        story.counted(3, "12");
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isZero();
        assertThat(told.on(Account.FOUND_AT_COUNT)).isEqualTo(-200);
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(1_200);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("12");
    }

    /** An estimated use of nothing is no use to share with. */
    @Test
    void estimatedUsesOfNothingCountAsNone() {
        story.bought(1, "2", 200);
        story.usedAbout(2, "0", BOWL);
        story.counted(3, "3");
        story.usedAbout(4, "0", BOWL);
        story.counted(5, "2");
        Told told = story.told();
        assertThat(told.on(3, Account.FOUND_AT_COUNT)).isEqualTo(-100);
        assertThat(told.on(5, Account.WRITE_OFFS)).isEqualTo(100);
        assertThat(told.on(Account.PIECES)).isZero();
    }
}
