package patinary.finishes;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import patinary.finishes.Estimate.Stock;
import patinary.measure.Coverage;
import patinary.measure.Unit;

/** An invented finish; every figure worked by hand. */
class EstimateTest {

    private static final UUID PAINT = new UUID(0, 1);
    private static final UUID WAX = new UUID(0, 2);
    private static final UUID KNOB = new UUID(0, 3);
    private static final BigDecimal FOOT = Unit.SQUARE_FOOT.factor();

    private static final Finish FINISH = new Finish(
            "Two coats and wax",
            "",
            List.of(
                    step(1, 20, new Finish.Wait(120, 240, "Second coat")),
                    step(2, 20, new Finish.Wait(720, 1440, "Wax")),
                    step(3, 10, new Finish.Wait(10, 15, "Wipe back")),
                    step(4, 5, null)),
            List.of(
                    need(1, 1, PAINT, "8", FOOT),
                    need(2, 2, PAINT, "6", FOOT),
                    need(3, 3, WAX, "3", FOOT),
                    need(4, 4, KNOB, "2", null)));

    /**
     * On two square feet: paint (8 + 6) × 2 = 28 ml, of 100 ml that cost 5.00: 1.40. Wax 3 × 2 = 6 g, of which 4 g are left
     * at 0.17: 6 × 17 ÷ 4 = 25.5, half up 0.26, and 2 g are missing. Two knobs, none left, the last ten bought for 19.00:
     * 3.80, two missing. Together 5.46. Work 55 minutes; waits 850 to 1695 minutes.
     */
    @Test
    void saysWhatAPieceWillTake() {
        Estimate estimate = Estimate.of(
                FINISH,
                FOOT.multiply(BigDecimal.valueOf(2)),
                Map.of(
                        PAINT, left("100", 500),
                        WAX, left("4", 17),
                        KNOB, new Stock(BigDecimal.ZERO, 1900, BigDecimal.TEN, false)));
        assertThat(estimate.minutes()).isEqualTo(55);
        assertThat(estimate.elapsedFrom()).isEqualTo(55 + 850);
        assertThat(estimate.elapsedTo()).isEqualTo(55 + 1695);
        assertThat(estimate.lines())
                .extracting(line -> line.quantity().stripTrailingZeros().toPlainString() + " "
                        + line.costMinor() + " "
                        + line.missing().stripTrailingZeros().toPlainString() + " " + line.isLast())
                .containsExactly("28 140 0 false", "6 26 2 false", "2 380 2 true");
        assertThat(estimate.costMinor()).isEqualTo(546);
        assertThat(estimate.isAreaMissing()).isFalse();
        assertThat(estimate.isCostMissing()).isFalse();
    }

    @Test
    void saysWhatItDoesNotKnow() {
        Estimate blind = Estimate.of(FINISH, null, Map.of(KNOB, left("5", 500)));
        assertThat(blind.isAreaMissing()).isTrue();
        assertThat(blind.costMinor()).isEqualTo(200);
        Estimate unbought = Estimate.of(FINISH, FOOT, Map.of());
        assertThat(unbought.isCostMissing()).isTrue();
        assertThat(unbought.lines().get(0).missing()).isEqualByComparingTo("14");
    }

    /** Uses that wait for their receipt make nothing of what is left, and do not add to what is missing for this piece. */
    @Test
    void takesLessThanNothingForNothing() {
        Stock owed = new Stock(new BigDecimal("-30"), 0, BigDecimal.ZERO, false);
        Estimate estimate = Estimate.of(FINISH, FOOT, Map.of(PAINT, owed));
        assertThat(estimate.lines().get(0).missing()).isEqualByComparingTo("14");
    }

    @Test
    void saysTheMiddleAndTheRange() {
        assertThat(Spread.of(List.of())).isEmpty();
        assertThat(Spread.of(List.of(50L))).contains(new Spread(1, 50, 50, 50));
        assertThat(Spread.of(List.of(40L, 90L, 45L))).contains(new Spread(3, 45, 40, 90));
        assertThat(Spread.of(List.of(40L, 90L, 45L, 50L))).contains(new Spread(4, 48, 40, 90));
        assertThat(Spread.of(List.of(1L, 2L)).orElseThrow().isEnough()).isFalse();
        assertThat(Spread.of(List.of(1L, 2L, 3L)).orElseThrow().isEnough()).isTrue();
    }

    @Property
    void keepsTheMiddleWithinTheRange(
            @ForAll @Size(min = 1, max = 20) List<@IntRange(min = -500, max = 5000) Integer> figures) {
        Spread spread =
                Spread.of(figures.stream().map(Integer::longValue).toList()).orElseThrow();
        assertThat(spread.median()).isBetween(spread.least(), spread.most());
        long notAbove = figures.stream().filter(one -> one <= spread.median()).count();
        assertThat(notAbove * 2).isGreaterThanOrEqualTo(figures.size());
    }

    @Test
    void saysHowLongToWait() {
        assertThat(new Span().say(15)).isEqualTo("15\u00a0min");
        assertThat(new Span().say(135)).isEqualTo("2\u00a0h 15\u00a0min");
        assertThat(new Span().say(2160)).isEqualTo("1\u00a0day 12\u00a0h");
        assertThat(new Span().say(43205)).isEqualTo("30\u00a0days");
        assertThat(Span.range(10, 15)).isEqualTo("10–15\u00a0min");
        assertThat(Span.range(120, 240)).isEqualTo("2\u00a0h–4\u00a0h");
        assertThat(Span.range(60, 60)).isEqualTo("1\u00a0h");
    }

    @Test
    void keepsSuppliesWithTheirSteps() {
        FinishForm form = form("a", "b", "c");
        FinishRows.rearrange(form, "up-2");
        assertThat(form.steps).extracting(step -> step.what).containsExactly("a", "c", "b");
        assertThat(form.needs).extracting(need -> need.step).containsExactly("1", "3", "2");
        FinishRows.rearrange(form, "drop-step-1");
        assertThat(form.steps).extracting(step -> step.what).containsExactly("a", "b");
        assertThat(form.needs).extracting(need -> need.step).containsExactly("1", "2", "1");
        FinishRows.rearrange(form, "drop-need-0");
        FinishRows.rearrange(form, "drop-step-99");
        FinishRows.rearrange(form, "up-x");
        assertThat(form.needs).hasSize(2);
    }

    private static FinishForm form(String... steps) {
        FinishForm form = new FinishForm();
        for (String what : steps) {
            FinishForm.StepLine step = new FinishForm.StepLine();
            step.what = what;
            form.steps.add(step);
            FinishForm.NeedLine need = new FinishForm.NeedLine();
            need.step = Integer.toString(form.steps.size());
            form.needs.add(need);
        }
        return form;
    }

    private static Stock left(String quantity, long costMinor) {
        BigDecimal left = new BigDecimal(quantity);
        return new Stock(left, costMinor, left, true);
    }

    private static Finish.Step step(int line, int minutes, Finish.Wait wait) {
        return new Finish.Step(line, "Step " + line, minutes, wait, List.of());
    }

    private static Finish.Need need(int line, int step, UUID supply, String quantity, BigDecimal per) {
        return new Finish.Need(line, step, supply, quantity, new Coverage(new BigDecimal(quantity), per));
    }
}
