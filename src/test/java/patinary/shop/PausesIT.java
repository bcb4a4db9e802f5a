package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.MovedClock;
import patinary.testing.ShopTest;

@ShopTest
class PausesIT {

    @Autowired
    private JdbcClient jdbc;

    private final MovedClock clock = new MovedClock();
    private Pauses pauses;

    @BeforeEach
    void start() {
        pauses = new Pauses(jdbc, clock);
    }

    @Test
    void letsAFewMistakesPassAndThenWaits() {
        assertThat(tries("Robin", "192.0.2.1", 5)).isEqualTo(5);
        assertThat(pauses.mayTry("Robin", "192.0.2.1")).isFalse();
        clock.move(Duration.ofSeconds(1));
        assertThat(pauses.mayTry("Robin", "192.0.2.1")).isTrue();
        clock.move(Duration.ofMillis(1999));
        assertThat(pauses.mayTry("Robin", "192.0.2.1")).isFalse();
        clock.move(Duration.ofMillis(1));
        assertThat(pauses.mayTry("Robin", "192.0.2.1")).isTrue();
    }

    /** Guessing without end from many places: she waits fifteen seconds at most, from her own. */
    @Test
    void neverKeepsTheOwnerOutForLongWhoeverGuesses() {
        for (int i = 0; i < 100; i++) {
            pauses.mayTry("Robin", "203.0.113." + i);
            clock.move(Duration.ofSeconds(15));
        }
        assertThat(pauses.mayTry("Robin", "198.51.100.7")).isTrue();
    }

    @Test
    void countsAnAddressOverAllNamesUpToAQuarterOfAnHour() {
        for (int i = 0; i < 40; i++) {
            pauses.mayTry("name " + i, "192.0.2.1");
            clock.move(Duration.ofMinutes(15));
        }
        assertThat(pauses.mayTry("another", "192.0.2.1")).isTrue();
        clock.move(Duration.ofMinutes(14));
        assertThat(pauses.mayTry("yet another", "192.0.2.1")).isFalse();
        assertThat(pauses.mayTry("yet another", "198.51.100.7")).isTrue();
    }

    @Test
    void forgetsAfterASignIn() {
        tries("Robin", "192.0.2.1", 5);
        pauses.succeeded("Robin", "192.0.2.1");
        assertThat(tries("Robin", "192.0.2.1", 9)).isEqualTo(5);
    }

    /** Several copies of the program behind one proxy. */
    @Test
    void areSharedByAllCopiesOfTheProgram() {
        Pauses elsewhere = new Pauses(jdbc, clock);
        for (int i = 0; i < 5; i++) {
            (i % 2 == 0 ? pauses : elsewhere).mayTry("Robin", "192.0.2." + i);
        }
        assertThat(pauses.mayTry("Robin", "192.0.2.99")).isFalse();
        assertThat(elsewhere.mayTry("Robin", "192.0.2.99")).isFalse();
    }

    @Test
    void letNoMoreThroughWhenManyComeAtOnce() throws Exception {
        ExecutorService many = Executors.newFixedThreadPool(8);
        try {
            List<Callable<Boolean>> guesses = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                guesses.add(() -> pauses.mayTry("Robin", "192.0.2.1"));
            }
            int through = 0;
            for (Future<Boolean> guess : many.invokeAll(guesses)) {
                through += guess.get() ? 1 : 0;
            }
            assertThat(through).isLessThanOrEqualTo(5).isPositive();
        } finally {
            many.shutdownNow();
        }
    }

    private int tries(String name, String address, int times) {
        int through = 0;
        for (int i = 0; i < times; i++) {
            through += pauses.mayTry(name, address) ? 1 : 0;
        }
        return through;
    }
}
