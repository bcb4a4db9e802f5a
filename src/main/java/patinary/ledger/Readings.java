package patinary.ledger;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Keeps what was read of the whole shop until anything is recorded or changed, so that a page looked at twice, or narrowed to
 * something else, does not read the shop twice. What is kept is never older than the last change: the number of changes is asked for
 * first, in the database, so it holds with several copies of the program too. docs/decisions/0023-readings.md says why.
 */
@Component
public class Readings {

    /** So many readings at once; the one that nobody asked for longest goes first. All go when memory is short. */
    private static final int MOST = 24;

    private final Turn turn;
    private final Map<Object, Reading> readings = new LinkedHashMap<>(MOST, 0.75f, true) {

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Reading> eldest) {
            return size() > MOST;
        }
    };
    /** Within a reading, the number of changes that the outermost one began with; what it reads itself is asked for as of then. */
    private final ThreadLocal<Long> within = new ThreadLocal<>();

    private long newest = -1;

    Readings(Turn turn) {
        this.turn = turn;
    }

    /**
     * What was read, or what is read now. Two who ask at once wait for one reading.
     *
     * @param what tells this reading from every other, by {@code equals}, with the day and all else that it depends on
     * @param reading what it gives is handed to everybody who asks, so nobody may change it
     */
    public <T> T of(Object what, Supplier<T> reading) {
        // Somebody who writes sees what is not yet stored and may never be; that is nobody else's reading.
        if (!TransactionSynchronizationManager.isCurrentTransactionReadOnly()) {
            return reading.get();
        }
        Long began = within.get();
        if (began != null) {
            return slot(what, began).as(began, () -> new Known<>(began, reading.get()));
        }
        long changes = turn.changes();
        return slot(what, changes).as(changes, () -> afresh(reading));
    }

    /** Reads now, whatever was changed while others read and this one waited: so nobody of those who wait has to read it once more. */
    private <T> Known<T> afresh(Supplier<T> reading) {
        long changes = turn.changes();
        within.set(changes);
        try {
            return new Known<>(changes, reading.get());
        } finally {
            within.remove();
        }
    }

    private Reading slot(Object what, long changes) {
        synchronized (readings) {
            if (changes > newest) {
                newest = changes;
                readings.clear();
            }
            return readings.computeIfAbsent(what, one -> new Reading());
        }
    }

    /** What was read, after so many changes. */
    private record Known<T>(long changes, T what) {}

    /** One thing read. */
    private static final class Reading {

        private long changes = -1;
        private SoftReference<@Nullable Object> read = new SoftReference<>(null);

        /** A newer one does as well: whoever began earlier would see the same rows now. */
        @SuppressWarnings("unchecked")
        synchronized <T> T as(long wanted, Supplier<Known<T>> reading) {
            Object known = changes >= wanted ? read.get() : null;
            if (known == null) {
                Known<T> fresh = reading.get();
                known = fresh.what();
                read = new SoftReference<>(known);
                changes = fresh.changes();
            }
            return (T) known;
        }
    }
}
