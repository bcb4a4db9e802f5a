package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.PAINT;
import static patinary.ledger.Story.TRAY;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import patinary.ledger.Move.Destination;
import patinary.ledger.Story.Told;

/**
 * The wear of a tool, worked by hand; the one supply of the story is a tool here. Spreading a price by units of use is
 * common practice, no source.
 */
class ToolWearTest {

    private static final String FORTIETH = "0.025";

    /** A third, rounded up at the last decimal, so that three uses are all of it. */
    private static final String THIRD = "0.33333333333334";

    private final Story story = new Story();

    private UUID worn(int day, String quantity, UUID... pieces) {
        Destination to = new Destination.Pieces(PieceShare.equal(List.of(pieces)));
        return story.document(
                day,
                DocumentKind.BENCH_ENTRY,
                new Move.SupplyOut(PAINT, StockPlace.BENCH, new BigDecimal(quantity), true, to, true));
    }

    private void worn(int day, String quantity, int times, UUID piece) {
        for (int i = 0; i < times; i++) {
            worn(day, quantity, piece);
        }
    }

    /** A brush of 10.00 that is thought to last 40 pieces: 0.25 a piece. */
    @ParameterizedTest
    @EnumSource
    void eachUseTakesItsPartOfThePrice(StockMethod method) {
        story.bought(1, "1", 1_000);
        worn(2, FORTIETH, BOWL);
        worn(3, FORTIETH, BOWL, TRAY);
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(25 + 13);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(12);
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(950);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("0.95");
    }

    /** A sheet of sandpaper of 1.00 for three pieces: 0.33, 0.34, 0.33, and nothing of it is left. */
    @ParameterizedTest
    @EnumSource
    void threeThirdsAreTheWholeSheet(StockMethod method) {
        story.bought(1, "1", 100);
        UUID first = worn(2, THIRD, BOWL);
        UUID second = worn(3, THIRD, BOWL);
        UUID third = worn(4, THIRD, BOWL);
        Told told = story.told(method);
        assertThat(List.of(
                        told.of(first, Account.PIECES),
                        told.of(second, Account.PIECES),
                        told.of(third, Account.PIECES)))
                .containsExactly(33L, 34L, 33L);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("0");
        assertThat(told.cost(StockPlace.BENCH)).isZero();
    }

    /** It was to last two pieces and lasts five; the next brush bears nothing of the three. */
    @ParameterizedTest
    @EnumSource
    void whatOutlivesItsUsesCostsNothingMore(StockMethod method) {
        story.bought(1, "1", 400);
        worn(2, "0.5", 5, BOWL);
        UUID next = story.bought(7, "1", 600);
        UUID after = worn(8, "0.5", TRAY);
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(400);
        assertThat(told.of(next, Account.PIECES)).isZero();
        assertThat(told.of(after, Account.PIECES)).isEqualTo(300);
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("0.5");
    }

    /** The last use of all takes what is left, and no more. */
    @ParameterizedTest
    @EnumSource
    void aUseThatGoesBeyondTakesWhatIsLeft(StockMethod method) {
        story.bought(1, "1", 400);
        worn(2, "0.75", BOWL);
        UUID last = worn(3, "0.75", TRAY);
        Told told = story.told(method);
        assertThat(told.of(last, Account.PIECES)).isEqualTo(100);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("0");
    }

    /** Unknown wear blocks nothing: a brush that she had before, and never bought in these books, costs nothing. */
    @ParameterizedTest
    @EnumSource
    void aToolThatWasNeverBoughtCostsNothing(StockMethod method) {
        worn(2, FORTIETH, BOWL);
        Told told = story.told(method);
        assertThat(told.postings()).isEmpty();
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.problems()).isEmpty();
    }

    /** After 12 of 40 uses it is worn out: the other 7.00 are 0.58 for each of the 12, and 0.04 more for the first four. */
    @ParameterizedTest
    @EnumSource
    void wornOutEarlySharesTheRestOverItsUses(StockMethod method) {
        story.bought(1, "1", 1_000);
        worn(2, FORTIETH, 8, BOWL);
        worn(3, FORTIETH, 4, TRAY);
        UUID wornOut = story.counted(4, "0");
        Told told = story.told(method);
        assertThat(told.of(wornOut, Account.PIECES)).isEqualTo(700);
        assertThat(told.on(4, Account.PIECES)).isEqualTo(700);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(200 + 464 + 4);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(100 + 232);
        assertThat(told.cost(StockPlace.BENCH)).isZero();
    }

    /** The same brush, lost: the uses keep their 3.00, and 7.00 are waste. */
    @ParameterizedTest
    @EnumSource
    void lostIsWasteAndNoPieceBearsIt(StockMethod method) {
        story.bought(1, "1", 1_000);
        worn(2, FORTIETH, 12, BOWL);
        story.countedAsWaste(4, "0");
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(300);
        assertThat(told.on(Account.WRITE_OFFS)).isEqualTo(700);
    }

    /**
     * Two brushes of 10.40, 0.26 a use; the first lasts 52 pieces, so the books have begun the second. Worn out, one left: the 52 uses
     * give back what 12 of them took, and bear the price of one brush.
     */
    @ParameterizedTest
    @EnumSource
    void aSpareIsWholeAgainWhenTheFirstIsWornOut(StockMethod method) {
        story.bought(1, "2", 2_080);
        worn(2, FORTIETH, 52, BOWL);
        story.counted(3, "1");
        Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(1_040);
        assertThat(told.quantity(StockPlace.BENCH)).isEqualByComparingTo("1");
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(1_040);
        assertThat(told.on(Account.FOUND_AT_COUNT)).isZero();
    }

    /** However many uses are thought and come: what they cost is the rounded running total, the price at most. */
    @Property(tries = 500)
    void usesCostTheRunningTotalAndNeverMoreThanThePrice(
            @ForAll @IntRange(min = 1, max = 60) int thought,
            @ForAll @IntRange(min = 0, max = 80) int came,
            @ForAll @IntRange(min = 0, max = 5_000) int cents,
            @ForAll StockMethod method) {
        Story brush = new Story();
        brush.bought(1, "1", cents);
        BigDecimal size = BigDecimal.ONE.divide(BigDecimal.valueOf(thought), 14, RoundingMode.CEILING);
        Destination to = new Destination.Pieces(PieceShare.equal(List.of(BOWL)));
        for (int i = 0; i < came; i++) {
            brush.document(
                    2, DocumentKind.BENCH_ENTRY, new Move.SupplyOut(PAINT, StockPlace.BENCH, size, true, to, true));
        }
        Told told = brush.told(method);
        long expected = BigDecimal.valueOf(cents)
                .multiply(BigDecimal.valueOf(Math.min(came, thought)))
                .divide(BigDecimal.valueOf(thought), 0, RoundingMode.HALF_UP)
                .longValueExact();
        assertThat(told.on(Account.PIECES)).isEqualTo(expected);
        assertThat(told.cost(StockPlace.BENCH)).isEqualTo(cents - expected);
        assertThat(told.result().uncosted()).isEmpty();
        assertThat(told.quantity(StockPlace.BENCH).signum() == 0).isEqualTo(came >= thought);
    }
}
