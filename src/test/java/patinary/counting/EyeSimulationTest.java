package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Invented shops whose truth is known: each measure off by a steady bias between half and double, each use off by chance of
 * 30% besides. The bounds are stated in the handbook, "How far her eye is off"; the table is in docs/benchmarks.md.
 */
class EyeSimulationTest {

    private static final double CHANCE = 0.3;

    private static EyeReport.Outcome weighed(int measures, int counts) {
        return EyeReport.of(new InventedEye.Habits(measures, CHANCE, 20, 0), counts);
    }

    @Test
    void threeCountsFindTheBiasOfOneMeasure() {
        EyeReport.Outcome outcome = weighed(1, 3);
        assertThat(outcome.before()).as("the shops are off before").isBetween(0.3, 0.5);
        assertThat(outcome.after()).as("mean error").isLessThan(0.05);
        assertThat(outcome.worst()).as("95 of 100").isLessThan(0.10);
    }

    @Test
    void whatIsOfferedToBeCorrectedIsCorrectedEvenWhereMeasuresAreMixed() {
        for (int measures = 1; measures <= 3; measures++) {
            EyeReport.Outcome outcome = weighed(measures, 3);
            assertThat(outcome.after()).as("all of %d", measures).isLessThan(0.7 * outcome.before());
            assertThat(outcome.offered()).as("offered of %d", measures).isGreaterThan(0.02);
            assertThat(outcome.offeredAfter()).as("offered of %d", measures).isLessThan(0.12);
            assertThat(outcome.offeredBefore()).as("offered of %d", measures).isGreaterThan(0.3);
        }
    }

    @Test
    void intervalsHoldTheTruthAsOftenAsTheySay() {
        for (int counts : new int[] {3, 12}) {
            for (double step : new double[] {0, 60}) {
                EyeReport.Outcome outcome = EyeReport.of(new InventedEye.Habits(2, CHANCE, 20, step), counts);
                assertThat(outcome.covered())
                        .as("%d counts, step %s", counts, step)
                        .isGreaterThan(0.92);
            }
        }
    }

    /** What is left of the error of one use when its measure is right is chance; counts tell how much, and take none of it. */
    @Test
    void chanceIsReportedAndStays() {
        EyeReport.Outcome outcome = weighed(1, 12);
        assertThat(outcome.chance()).isBetween(0.2, 0.35);
        assertThat(outcome.singleAfter()).isLessThan(0.6 * outcome.singleBefore());
        assertThat(outcome.singleAfter()).isGreaterThan(0.2);
        assertThat(outcome.singleAfter() - outcome.singleKnown()).isBetween(-0.03, 0.03);
    }

    @Test
    void withoutBiasNearlyNothingIsOffered() {
        long off = LongStream.range(0, 400)
                .mapToObj(seed ->
                        Eye.of(new InventedEye(seed, new InventedEye.Habits(1, CHANCE, 20, 0), 1).counted(3).spans))
                .flatMap(eye -> eye.measures().stream())
                .filter(judged -> judged.verdict() == Eye.Verdict.IS_OFF)
                .count();
        assertThat(off).isLessThan(20);
    }
}
