package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The usual definition of the median, from memory; the numbers are invented. */
class MedianTest {

    @Test
    void isTheMiddleOne() {
        assertThat(Median.of(List.of(9, 1, 4))).contains(new BigDecimal("4"));
    }

    @Test
    void isHalfWayBetweenTheTwoInTheMiddle() {
        assertThat(Median.of(List.of(1, 4, 9, 20))).contains(new BigDecimal("6.5"));
    }

    @Test
    void ofNothingIsNotKnown() {
        assertThat(Median.of(List.of())).isEmpty();
    }
}
