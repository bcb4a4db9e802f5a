package patinary.durable;

import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Runs a whole transaction again where it was taken back only because another was in its way. A few times, and at once: the
 * other has gone through by then.
 */
final class Patience {

    static final int TRIES = 4;

    private static final Logger LOG = LoggerFactory.getLogger(Patience.class);

    private Patience() {}

    /** All of a transaction, from its begin to its commit; it leaves nothing behind where it fails. */
    @FunctionalInterface
    interface Whole<T extends @Nullable Object, E extends Throwable> {
        T run() throws E;
    }

    static <T extends @Nullable Object, E extends Throwable> T run(Whole<T, E> transaction) throws E {
        for (int tries = 1; true; tries++) {
            try {
                return transaction.run();
            } catch (RuntimeException failed) {
                if (tries == TRIES || StoreFailure.of(failed) != StoreFailure.BUSY) {
                    throw failed;
                }
                LOG.info("Two changes were in each other's way; this one is tried again");
            }
        }
    }
}
