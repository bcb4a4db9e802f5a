package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class PausesTest {

    private final MovedClock clock = new MovedClock();
    private final Pauses pauses = new Pauses(clock);

    @Test
    void letsAFewMistakesPass() {
        fail("Robin", "192.0.2.1", 4);
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isFalse();
    }

    @Test
    void doublesWithEachFurtherFailure() {
        fail("Robin", "192.0.2.1", 5);
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isTrue();
        clock.move(Duration.ofSeconds(1));
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isFalse();
        fail("Robin", "192.0.2.1", 1);
        clock.move(Duration.ofMillis(1999));
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isTrue();
        clock.move(Duration.ofMillis(1));
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isFalse();
    }

    @Test
    void neverKeepsTheOwnerOutForLongWhoeverGuesses() {
        fail("Robin", "192.0.2.1", 500);
        clock.move(Duration.ofSeconds(15));
        assertThat(pauses.isPaused("Robin", "198.51.100.7")).isFalse();
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isTrue();
        clock.move(Duration.ofMinutes(15));
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isFalse();
    }

    @Test
    void countsAnAddressOverAllNames() {
        for (int i = 0; i < 5; i++) {
            pauses.failed("name " + i, "192.0.2.1");
        }
        assertThat(pauses.isPaused("another", "192.0.2.1")).isTrue();
        assertThat(pauses.isPaused("another", "198.51.100.7")).isFalse();
    }

    @Test
    void forgetsAfterASignIn() {
        fail("Robin", "192.0.2.1", 9);
        pauses.succeeded("Robin", "192.0.2.1");
        fail("Robin", "192.0.2.1", 4);
        assertThat(pauses.isPaused("Robin", "192.0.2.1")).isFalse();
    }

    private void fail(String name, String address, int times) {
        for (int i = 0; i < times; i++) {
            pauses.failed(name, address);
        }
    }

    static final class MovedClock extends Clock {

        private Instant moment = Instant.parse("2025-03-01T09:00:00Z");

        void move(Duration by) {
            moment = moment.plus(by);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return moment;
        }
    }
}
