package patinary.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.ShopTest;

/** Several copies of the program on one database: each has its own {@link Leases}. */
@ShopTest
class LeasesIT {

    private static final int COPIES = 6;
    private static final Duration LONG = Duration.ofHours(6);

    @Autowired
    private JdbcClient jdbc;

    @Test
    void ofManyCopiesAtOnceOneDoesIt() throws Exception {
        ExecutorService copies = Executors.newFixedThreadPool(COPIES);
        try {
            for (int round = 0; round < 20; round++) {
                String job = "race-" + round / 2;
                // Every other round finds the row of the round before, which is free again.
                free(job);
                assertThat(race(copies, job)).as("round %s", round).isEqualTo(1);
            }
        } finally {
            copies.shutdownNow();
        }
    }

    private int race(ExecutorService copies, String job) throws Exception {
        CyclicBarrier start = new CyclicBarrier(COPIES);
        AtomicInteger done = new AtomicInteger();
        List<Future<Boolean>> tries = new ArrayList<>();
        for (int copy = 0; copy < COPIES; copy++) {
            Leases leases = new Leases(jdbc);
            tries.add(copies.submit(() -> {
                start.await();
                return leases.once(job, LONG, LONG, done::incrementAndGet);
            }));
        }
        int said = 0;
        for (Future<Boolean> attempt : tries) {
            said += attempt.get() ? 1 : 0;
        }
        assertThat(said).isEqualTo(done.get());
        return said;
    }

    @Test
    void isNotDoneAgainBeforeItsTimeAndAtOnceAfterAFailure() throws IOException {
        Leases one = new Leases(jdbc);
        Leases other = new Leases(jdbc);

        assertThatThrownBy(() -> one.once("job", LONG, LONG, () -> {
                    assertThat(other.isTaken("job")).isTrue();
                    throw new IOException("no disk");
                }))
                .hasMessage("no disk");
        assertThat(other.once("job", LONG, LONG, () -> {})).isTrue();
        assertThat(one.once("job", LONG, LONG, () -> {})).isFalse();
        assertThat(other.once("job", LONG, LONG, () -> {}))
                .as("nor by the same")
                .isFalse();
    }

    @Test
    void whoIsDeadKeepsNobodyFromItForEver() {
        Leases dead = new Leases(jdbc);
        Leases alive = new Leases(jdbc);

        dead.once("job", Duration.ZERO, LONG, () -> {
            assertThat(alive.once("job", Duration.ZERO, LONG, () -> {})).isFalse();
            free("job");
            assertThat(alive.once("job", LONG, LONG, () -> {})).isTrue();
        });

        assertThat(alive.isTaken("job"))
                .as("who comes back from the dead frees nothing of another's")
                .isTrue();
    }

    private void free(String job) {
        jdbc.sql("update job_lease set free_at = ? where job = ?")
                .params(OffsetDateTime.parse("2025-01-01T00:00:00Z"), job)
                .update();
    }
}
