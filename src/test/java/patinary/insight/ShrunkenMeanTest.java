package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShrunkenMeanTest {

    /**
     * Yield of dyestuff in six batches of five samples (Davies, "Statistical Methods in Research and Production", 1947;
     * widely reprinted as the example of one-way random effects; figures and published variance estimates 1764.05 between
     * and 2451.25 within from memory, and recomputed by hand from the 30 figures).
     */
    private static final List<Moments> DYESTUFF = List.of(
            Moments.of(1545, 1440, 1440, 1520, 1580),
            Moments.of(1540, 1555, 1490, 1560, 1495),
            Moments.of(1595, 1550, 1605, 1510, 1560),
            Moments.of(1445, 1440, 1595, 1465, 1545),
            Moments.of(1595, 1630, 1515, 1635, 1625),
            Moments.of(1520, 1455, 1450, 1480, 1445));

    @Test
    void givesThePublishedVariancesAndDrawsTheBatchesTowardsAll() {
        ShrunkenMean means = ShrunkenMean.of(DYESTUFF);
        assertThat(means.within()).isCloseTo(2451.25, within(1e-9));
        assertThat(means.between()).isCloseTo(1764.05, within(1e-9));
        // By hand: weight 5 ÷ (5 + 2451.25 ÷ 1764.05) = 0.782527; 1527.5 + 0.782527 × (1600 − 1527.5) = 1584.2332.
        Estimate best = means.mean(DYESTUFF.get(4));
        assertThat(best.ownWeight()).isCloseTo(0.782527, within(1e-6));
        assertThat(best.value()).isCloseTo(1584.2332, within(1e-4));
    }

    /**
     * Unequal groups by hand: (10, 20), (40) and (60, 70, 80, 90): mean of all 52.857143; within (50 + 0 + 500) ÷ 4 = 137.5;
     * apart 2 (15 − m)² + (40 − m)² + 4 (75 − m)² = 4992.857143; Σn² ÷ n = 21 ÷ 7 = 3; between (4992.857143 − 2 × 137.5) ÷ 4
     * = 1179.464286.
     */
    @Test
    void unequalGroupsByHand() {
        Moments first = Moments.of(10, 20);
        Moments second = Moments.of(40);
        ShrunkenMean means = ShrunkenMean.of(List.of(first, second, Moments.of(60, 70, 80, 90), Moments.NONE));
        assertThat(means.within()).isCloseTo(137.5, within(1e-9));
        assertThat(means.between()).isCloseTo(1179.464286, within(1e-6));
        assertThat(means.mean(Moments.NONE).value()).isCloseTo(52.857143, within(1e-6));
        assertThat(means.mean(second).value()).isBetween(40.0, 52.857);
        assertThat(means.mean(second).variance())
                .isGreaterThan(means.mean(first).variance());
    }

    /** By hand: means 15 and 15 lie no further apart than chance would have it. */
    @Test
    void groupsThatShowNoDifferenceGetTheMeanOfAll() {
        ShrunkenMean means = ShrunkenMean.of(List.of(Moments.of(10, 20), Moments.of(15, 15)));
        Estimate any = means.mean(Moments.of(20, 20, 20));
        assertThat(any.value()).isEqualTo(15);
        assertThat(any.ownWeight()).isZero();
        // Variance of the mean of 10, 20, 15, 15: 50 ÷ 3 ÷ 4.
        assertThat(any.variance()).isCloseTo(50.0 / 12, within(1e-9));
    }

    @Test
    void largeAmountsLoseNothing() {
        Moments far = Moments.of(1_000_000_000_001L, 1_000_000_000_003L);
        assertThat(far.scatter()).isEqualTo(2);
    }
}
