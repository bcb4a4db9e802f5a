package patinary.durable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class GroupForceTest {

    private final ExecutorService people = Executors.newCachedThreadPool();

    @AfterEach
    void goHome() {
        people.shutdownNow();
    }

    @Test
    void oneAloneIsForcedOnceForEachChange() {
        GroupForce force = new GroupForce(() -> {});

        force.await();
        force.await();

        assertThat(force.count()).isEqualTo(2);
    }

    /** The first forcing is held back while nine others commit: one more serves all nine. */
    @Test
    void whoCommitsWhileOneRunsSharesTheNext() throws Exception {
        CountDownLatch inside = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        GroupForce force = new GroupForce(() -> {
            inside.countDown();
            awaitQuietly(goOn);
        });
        List<Future<?>> waiting = new ArrayList<>();
        waiting.add(people.submit(force::await));
        inside.await();
        List<Thread> others = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            Thread other = new Thread(force::await);
            other.start();
            others.add(other);
        }
        Awaitility.await().until(() -> others.stream().allMatch(other -> other.getState() == Thread.State.WAITING));
        goOn.countDown();
        waiting.get(0).get(10, TimeUnit.SECONDS);
        for (Thread other : others) {
            other.join(10_000);
        }

        assertThat(force.count()).isEqualTo(2);
    }

    /** Whatever was written before somebody began to wait is forced when she is told so, however they fall together. */
    @Test
    void nobodyIsToldTooEarly() throws Exception {
        AtomicLong written = new AtomicLong();
        AtomicLong forced = new AtomicLong();
        GroupForce force = new GroupForce(() -> {
            long held = written.get();
            Thread.yield();
            forced.accumulateAndGet(held, Math::max);
        });
        List<Future<Boolean>> told = new ArrayList<>();
        for (int person = 0; person < 8; person++) {
            told.add(people.submit(() -> {
                boolean always = true;
                for (int change = 0; change < 2_000; change++) {
                    long mine = written.incrementAndGet();
                    force.await();
                    always &= forced.get() >= mine;
                }
                return always;
            }));
        }
        for (Future<Boolean> one : told) {
            assertThat(one.get(60, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(force.count()).isLessThanOrEqualTo(written.get());
    }

    @Test
    void aFailureIsToldToWhoAsked() {
        AtomicLong tries = new AtomicLong();
        GroupForce force = new GroupForce(() -> {
            if (tries.incrementAndGet() == 1) {
                throw new IllegalStateException("the disk is gone");
            }
        });

        assertThatThrownBy(force::await).hasMessage("the disk is gone");
        force.await();
        assertThat(tries.get()).as("what failed is not taken for done").isEqualTo(2);
    }

    private static void awaitQuietly(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
