package patinary.supplies;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import patinary.money.Amount;

/** How long tools last, worked by hand; common practice, no source. */
class ToolSpanTest {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);

    /** 52 uses, one brush; then one lost after 3 uses; then 7 uses of two sheets; then 2 uses, still going on. */
    @Test
    void aSpanReachesFromCountToCount() {
        List<ToolSpan> spans = ToolSpan.of(
                List.of(count(10, false), count(20, true), count(30, false)),
                List.of(used(1, "40"), used(10, "12"), used(11, "3"), used(25, "7"), used(31, "2")),
                List.of(worn(10, "1"), worn(20, "1"), worn(30, "2"), worn(31, "0.05")));
        assertThat(spans.stream().map(ToolSpan::tells)).containsExactly(true, false, true, false);
        assertThat(spans.get(0).uses()).isEqualByComparingTo("52");
        assertThat(spans.get(0).lasted()).isEqualByComparingTo("52");
        assertThat(spans.get(0).first()).isEqualTo(day(1));
        assertThat(spans.get(2).lasted()).isEqualByComparingTo("4");
        assertThat(spans.get(3).uses()).isEqualByComparingTo("2");
        assertThat(spans.get(3).until()).isNull();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 6, 7, 40, 999, 99_999, 100_000})
    void allUsesTogetherAreNoLessThanOneAndTheNumberReadsBack(int uses) {
        BigDecimal size = ToolUse.size(uses);
        assertThat(size.multiply(BigDecimal.valueOf(uses))).isGreaterThanOrEqualTo(BigDecimal.ONE);
        assertThat(size.multiply(BigDecimal.valueOf(uses - 1L))).isLessThan(BigDecimal.ONE);
        assertThat(ToolUse.lasts(size)).isEqualTo(uses);
    }

    /** What is left, the uses since the last count, and how many whole ones are then likely left when one goes. */
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "0.7, 12, 0", "0, 52, 0", "1.7, 12, 1", "0.99999999999998, 3, 1", "2, 0, 1", "0, 0, 0"})
    void aSpareIsGuessed(String left, String uses, String spare) {
        assertThat(view("0.025", left, uses, null).spare()).isEqualByComparingTo(spare);
    }

    @Test
    void theBetterNumberIsOfferedWhereItDiffers() {
        assertThat(view("0.025", "0", "0", new ToolView.Lasted(new BigDecimal("52"), 40))
                        .better())
                .isEqualTo(52);
        assertThat(view("0.025", "0", "0", new ToolView.Lasted(new BigDecimal("40"), 30))
                        .better())
                .isNull();
        assertThat(view("0.025", "0", "0", null).better()).isNull();
    }

    /** 7.50 for 0.75 of a brush at 1/40: 0.25 a use, 30 uses left. With nothing left a use costs nothing. */
    @Test
    void aUseCostsItsPartOfWhatIsLeft() {
        ToolView view =
                ToolView.of(new BigDecimal("0.025"), new BigDecimal("0.75"), Amount.of(750), BigDecimal.TEN, null);
        assertThat(view.costAUse()).isEqualTo(Amount.of(25));
        assertThat(view.usesLeft()).isEqualByComparingTo("30");
        assertThat(view("0.025", "0", "41", null).costAUse()).isNull();
        assertThat(view("0.025", "0", "41", null).outlives()).isTrue();
    }

    @Test
    void usesAreSaidAsTyped() {
        assertThat(ToolUse.words(BigDecimal.ONE)).isEqualTo("1 use");
        assertThat(ToolUse.words(new BigDecimal("2.50"))).isEqualTo("2.5 uses");
    }

    private static ToolView view(String size, String left, String uses, ToolView.Lasted last) {
        return ToolView.of(new BigDecimal(size), new BigDecimal(left), Amount.of(0), new BigDecimal(uses), last);
    }

    private static LocalDate day(int number) {
        return DAY.plusDays(number);
    }

    private static ToolSpan.Count count(int day, boolean waste) {
        return new ToolSpan.Count(day(day), waste);
    }

    private static ToolSpan.Used used(int day, String uses) {
        return new ToolSpan.Used(day(day), new BigDecimal(uses));
    }

    private static ToolSpan.Worn worn(int day, String quantity) {
        return new ToolSpan.Worn(day(day), new BigDecimal(quantity));
    }
}
