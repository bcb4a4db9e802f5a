package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TriesTest {

    private static final Instant NOON = Instant.parse("2025-03-01T12:00:00Z");
    private static final Duration LONGEST = Duration.ofMinutes(15);

    /** By hand: nothing for four, then 1, 2, 4 seconds and so on, and never more than the longest. */
    @ParameterizedTest
    @CsvSource({"1,0", "4,0", "5,1", "6,2", "7,4", "10,32", "14,512", "15,900", "16,900", "60,900"})
    void pauseDoublesFromTheFifthOn(int failures, long seconds) {
        Tries tries = Tries.first(NOON);
        for (int i = 1; i < failures; i++) {
            tries = tries.oneMore(NOON, LONGEST);
        }
        assertThat(tries.failures()).isEqualTo(failures);
        assertThat(tries.isPause(NOON)).isEqualTo(seconds > 0);
        assertThat(tries.until()).isEqualTo(NOON.plusSeconds(seconds));
        assertThat(tries.isPause(NOON.plusSeconds(seconds))).isFalse();
    }

    @Test
    void areForgottenADayAfterTheLast() {
        Tries tries = new Tries(9, NOON, NOON.plusSeconds(16));
        assertThat(tries.oneMore(NOON.plus(Duration.ofHours(24)), LONGEST).failures())
                .isEqualTo(10);
        assertThat(tries.oneMore(NOON.plus(Duration.ofHours(24)).plusSeconds(1), LONGEST)
                        .failures())
                .isEqualTo(1);
    }
}
