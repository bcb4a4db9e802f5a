package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Fewer of the shops of docs/handbook/how-good-the-figures-are.md, with the same seeds. The bounds leave room for about three
 * standard errors of so few shops.
 */
class AdviceSimulationTest {

    /**
     * The mean of the sold ones is by theory 86.6 where the true mean is 180 (the days of an exponential sale seen in up to a year), half a
     * day more for whole days.
     */
    @Test
    void theMeanOfTheSoldIsFarTooKindAndOurMedianIsNot() {
        AdviceSimulation.Days days = AdviceSimulation.days(300, 60, 180);
        assertThat(days.truth()).isEqualTo(125);
        assertThat(days.meanOfSold()).isCloseTo(87.1, within(3.0));
        assertThat(days.ourMedian()).isCloseTo(125, within(8.0));
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 20, 60})
    void theLimitsHoldTheTruth(int pieces) {
        assertThat(AdviceSimulation.coverage(400, pieces, 120).holds()).isGreaterThan(0.92);
    }

    @Test
    void likeGroupsAreSeldomCalledFaster() {
        AdviceSimulation.FalseWords words = AdviceSimulation.falseWords(200, 20);
        assertThat(words.faster()).isLessThan(0.05);
        assertThat(words.either()).isLessThan(0.1);
    }

    @Test
    void theAdviceLosesLessThanWhatSoldLast() {
        AdviceSimulation.Regret regret = AdviceSimulation.regret(200, 20);
        assertThat(regret.advice()).isLessThan(regret.soldLast() / 2);
        assertThat(regret.advice()).isLessThan(regret.rawMean());
        assertThat(regret.noAdvice()).isLessThan(0.05);
    }
}
