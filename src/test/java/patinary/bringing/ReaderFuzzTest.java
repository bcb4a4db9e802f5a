package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Mutated files do no harm to the reader. A short run each time; by hand with {@code -Dpatinary.fuzz.reads=1000000} and, for
 * other inputs, {@code -Dpatinary.fuzz.seed}.
 */
class ReaderFuzzTest {

    @Test
    void takesWhateverComes() {
        long inputs = Long.getLong("patinary.fuzz.reads", 8_000);
        long start = System.nanoTime();
        ReaderFuzz.Seen seen = ReaderFuzz.run(inputs, Long.getLong("patinary.fuzz.seed", 20_250_314));
        if (inputs > 8_000) {
            System.out.println(seen + " in " + (System.nanoTime() - start) / 1_000_000 + " ms");
        }
        assertThat(seen.rows()).isPositive();
        assertThat(seen.sales()).isPositive();
        assertThat(seen.faults()).isPositive();
    }
}
