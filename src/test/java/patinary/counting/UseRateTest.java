package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class UseRateTest {

    private static double[] equal(int many) {
        double[] uses = new double[many];
        Arrays.fill(uses, 1);
        return uses;
    }

    /** Exact Poisson limits, Garwood 1936: 5 gives 1.623486 to 11.668332, 10 gives 4.795389 to 18.390356. */
    @Test
    void equalUsesGiveTheExactPoissonInterval() {
        UseRate five = UseRate.of(equal(5), 10).orElseThrow();
        assertThat(five.perWeek()).isCloseTo(0.5, within(1e-12));
        assertThat(five.low()).isCloseTo(0.1623486, within(1e-7));
        assertThat(five.high()).isCloseTo(1.1668332, within(1e-7));
        UseRate ten = UseRate.of(equal(10), 10).orElseThrow();
        assertThat(ten.low()).isCloseTo(0.4795389, within(1e-7));
        assertThat(ten.high()).isCloseTo(1.8390356, within(1e-7));
    }

    @Test
    void theUnitPlaysNoPart() {
        double[] ml = {20, 5, 60, 15};
        double[] litres = Arrays.stream(ml).map(x -> x / 1000).toArray();
        UseRate one = UseRate.of(ml, 8).orElseThrow();
        UseRate other = UseRate.of(litres, 8).orElseThrow();
        assertThat(other.low() * 1000).isCloseTo(one.low(), within(1e-9));
        assertThat(other.high() * 1000).isCloseTo(one.high(), within(1e-9));
    }

    @Test
    void tooLittleSaysNothing() {
        assertThat(UseRate.of(equal(2), 20)).isEmpty();
        assertThat(UseRate.of(equal(9), 3.9)).isEmpty();
    }

    /** 120 ml left, 10 ml a week: 12 weeks; as fast as it may go 120/high, as slow 120/low. */
    @Test
    void weeksLeftFollowTheInterval() {
        UseRate rate = new UseRate(10, 5, 20, 12);
        assertThat(rate.lasts(120)).isEqualTo(new UseRate.Weeks(12, 6, 24));
        assertThat(rate.lasts(-3)).isEqualTo(new UseRate.Weeks(0, 0, 0));
    }

    /** Seeded: 26 weeks of about two uses a week of 2 to 40 ml; the interval holds the true rate at least 93 times in 100. */
    @Test
    void theIntervalHoldsTheTrueRate() {
        Random random = new Random(7);
        double truth = 2 * 21;
        int held = 0;
        for (int shop = 0; shop < 1000; shop++) {
            double[] uses = new double[poisson(random, 52)];
            for (int i = 0; i < uses.length; i++) {
                uses[i] = 2 + 38 * random.nextDouble();
            }
            UseRate rate = UseRate.of(uses, 26).orElseThrow();
            held += rate.low() <= truth && truth <= rate.high() ? 1 : 0;
        }
        assertThat(held).isGreaterThan(930);
    }

    private static int poisson(Random random, double mean) {
        int many = 0;
        for (double at = -Math.log(1 - random.nextDouble()); at < mean; at -= Math.log(1 - random.nextDouble())) {
            many++;
        }
        return many;
    }
}
