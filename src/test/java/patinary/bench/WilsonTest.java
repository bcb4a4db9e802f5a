package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class WilsonTest {

    /** Newcombe, Statistics in Medicine 17 (1998) 857-872, Table I, method 3. */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void agreesWithThePublishedTable(long failed, long of, double low, double high) {
        Wilson interval = Wilson.of(failed, of);
        assertThat(interval.low()).isCloseTo(low, within(0.00005));
        assertThat(interval.high()).isCloseTo(high, within(0.00005));
    }

    /** To nine digits against R 4.2.2; src/test/resources/patinary/bench/README.md. */
    @ParameterizedTest
    @CsvFileSource(resources = "binomial-intervals-expected.csv", numLinesToSkip = 1)
    void isTheIntervalOfTheReference(long failed, long of, double low, double high) {
        Wilson interval = Wilson.of(failed, of);
        assertThat(interval.low()).isCloseTo(low, within(Math.max(1e-12, low * 1e-9)));
        assertThat(interval.high()).isCloseTo(high, within(Math.max(1e-12, high * 1e-9)));
    }

    /** By hand: 4 of 7 gives (4 + 1.9207) / (7 + 3.8415) = 0.5461, less and more 0.2957. */
    @Test
    void fourOfSevenIsWorkedByHand() {
        assertThat(Wilson.of(4, 7).lowPercent()).isEqualTo(25);
        assertThat(Wilson.of(4, 7).highPercent()).isEqualTo(84);
    }

    @Test
    void allOrNothingReachesTheEnd() {
        assertThat(Wilson.of(3, 3).high()).isEqualTo(1);
        assertThat(Wilson.of(0, 3).low()).isZero();
    }

    @Test
    void noneAtAllHasNoInterval() {
        assertThatThrownBy(() -> Wilson.of(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Wilson.of(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
