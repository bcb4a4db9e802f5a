package patinary.durable;

import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Forces a store to the disk for many at once. Whoever has committed waits for a forcing that began after that; one forcing
 * serves all who committed before it began. So no more than two follow each other for any number who wait.
 *
 * <p>A forcing that fails serves nobody: each who waited for it tries once more itself, and is told if that fails too.
 */
final class GroupForce {

    private final Runnable forcing;
    private final ReentrantLock turn = new ReentrantLock();
    private final AtomicLong begun = new AtomicLong();
    private long done;

    /** @param forcing forces everything that was written before it is called, or throws */
    GroupForce(Runnable forcing) {
        this.forcing = forcing;
    }

    /** Returns once everything that was written before this call is forced. */
    void await() {
        // A forcing that runs now may have begun before what was written: only the next one is sure to hold it.
        long needed = begun.get() + 1;
        turn.lock();
        try {
            if (done < needed) {
                long mine = begun.incrementAndGet();
                forcing.run();
                done = mine;
            }
        } finally {
            turn.unlock();
        }
    }

    /** How many forcings were begun. */
    long count() {
        return begun.get();
    }
}
