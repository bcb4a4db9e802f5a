package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class TrueSizesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    private static Span span(int nth, double used, Span.Use... uses) {
        return new Span(new UUID(0, nth), null, DAY.plusDays(nth), List.of(uses), 20, used, 0, false);
    }

    private static Span.Use dabs(int times) {
        return new Span.Use("dab", times, 2.0 * times);
    }

    /**
     * By hand. Three spans of 10 dabs of 2 ml; used 34, 36 and 35 ml. Chance of a span: 10 x 2 x 2 = 40. Prior precision 0.09 /
     * 0.5625 = 0.16. Precision 0.16 + 3 x 400/40 = 30.16; right side 0.16 + 20 x 105/40 = 52.66; ratio 52.66/30.16 = 1.74602.
     * Squares 3 x 0.09 + 0.16 + (1156 + 1296 + 1225)/40 - 1.74602 x 52.66 = 0.409515..., degrees 6, t(6) at 97.5% = 2.446912 (table of
     * Student's t): half width 2.446912 x sqrt(0.409515/6/30.16).
     */
    @Test
    void aRatioByHand() {
        Eye eye = Eye.of(List.of(span(1, 34, dabs(10)), span(2, 36, dabs(10)), span(3, 35, dabs(10))));
        TrueSizes.Ratio ratio = eye.measures().get(0).ratio();
        double squares = 0.43 + 3677 / 40.0 - 52.66 * 52.66 / 30.16;
        double half = 2.446912 * Math.sqrt(squares / 6 / 30.16);
        assertThat(ratio.ratio()).isCloseTo(52.66 / 30.16, within(1e-9));
        assertThat(ratio.low()).isCloseTo(52.66 / 30.16 - half, within(1e-6));
        assertThat(ratio.high()).isCloseTo(52.66 / 30.16 + half, within(1e-6));
        assertThat(eye.plain()).isCloseTo(1.75, within(1e-12));
        assertThat(eye.measures().get(0).verdict()).isEqualTo(Eye.Verdict.IS_OFF);
    }

    @Test
    void twoCountsAreTooFewToTell() {
        Eye eye = Eye.of(List.of(span(1, 34, dabs(10)), span(2, 36, dabs(10))));
        assertThat(eye.measures().get(0).verdict()).isEqualTo(Eye.Verdict.TOO_FEW);
    }

    /** Always ten dabs with five brush loads: which of the two is off cannot be seen, so none is offered. */
    @Test
    void measuresThatAlwaysGoTogetherCannotBeToldApart() {
        Span.Use brush = new Span.Use("brush load", 5, 20);
        List<Span> spans =
                List.of(span(1, 60, dabs(10), brush), span(2, 62, dabs(10), brush), span(3, 58, dabs(10), brush));
        Eye eye = Eye.of(spans);
        assertThat(eye.measures()).hasSize(2).noneMatch(judged -> judged.verdict() == Eye.Verdict.IS_OFF);
        assertThat(eye.supply().ratio()).isBetween(1.4, 1.55);
    }

    @Test
    void wasteAndSpansWithoutUsesTellNothing() {
        Span waste = new Span(new UUID(0, 1), null, DAY, List.of(dabs(10)), 20, 80, 0, true);
        Span idle = new Span(new UUID(0, 2), DAY, DAY.plusDays(1), List.of(), 0, 5, 0, false);
        Eye eye = Eye.of(List.of(waste, idle));
        assertThat(eye.telling()).isZero();
        assertThat(eye.supply()).isNull();
        assertThat(eye.measures()).isEmpty();
    }

    @Test
    void readingOffStepsMakesItLessSure() {
        List<Span> weighed = List.of(span(1, 34, dabs(10)), span(2, 36, dabs(10)), span(3, 35, dabs(10)));
        List<Span> stepped = weighed.stream()
                .map(s -> new Span(s.count(), s.since(), s.until(), s.uses(), s.notedThen(), s.used(), 60, false))
                .toList();
        TrueSizes.Ratio sure = Eye.of(weighed).measures().get(0).ratio();
        TrueSizes.Ratio unsure = Eye.of(stepped).measures().get(0).ratio();
        assertThat(unsure.high() - unsure.low()).isGreaterThan(2 * (sure.high() - sure.low()));
    }

    @Test
    void theInverseIsTheInverse() {
        double[][] matrix = {{4, 1, 0.5}, {1, 3, 0.2}, {0.5, 0.2, 2}};
        double[] back = Matrices.times(matrix, Matrices.times(Matrices.inverse(matrix), new double[] {1, 2, 3}));
        assertThat(back).containsExactly(new double[] {1, 2, 3}, within(1e-12));
    }
}
