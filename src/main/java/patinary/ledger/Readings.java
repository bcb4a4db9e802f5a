package patinary.ledger;

import java.io.Serial;
import java.lang.ref.SoftReference;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
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

    /** So many readings at once, with those that they read themselves. All go when memory is short. */
    private static final int KEPT = 64;

    /** So many are remembered as asked for: fewer than are kept, so that they have room for what they read themselves. */
    private static final int REMEMBERED = 24;

    private final Turn turn;
    private final Clock clock;
    private final Map<Object, Reading> readings = new Latest<>(KEPT);
    private final Map<Object, Asked> asked = new Latest<>(REMEMBERED);
    /** Within a reading, how the outermost one began; what it reads itself is asked for as of then. */
    private final ThreadLocal<Began> within = new ThreadLocal<>();

    private long newest = -1;

    Readings(Turn turn, Clock clock) {
        this.turn = turn;
        this.clock = clock;
    }

    /**
     * What was read, or what is read now. Two who ask at once wait for one reading.
     *
     * @param what tells this reading from every other, by {@code equals}, with the day and all else that it depends on
     * @param reading what it gives is handed to everybody who asks, so nobody may change it
     */
    public <T> T of(Object what, Supplier<T> reading) {
        return of(what, reading, clock.instant());
    }

    private <T> T of(Object what, Supplier<T> reading, Instant asked) {
        // Somebody who writes sees what is not yet stored and may never be; that is nobody else's reading.
        if (!TransactionSynchronizationManager.isCurrentTransactionReadOnly()) {
            return reading.get();
        }
        Began outermost = within.get();
        if (outermost != null) {
            long began = outermost.changes();
            return slot(what, began).as(began, () -> new Known<>(began, reading.get()));
        }
        long changes = turn.changes();
        return slot(what, changes).as(changes, () -> afresh(reading, asked));
    }

    /** Reads now, whatever was changed while others read and this one waited: so nobody of those who wait has to read it once more. */
    private <T> Known<T> afresh(Supplier<T> reading, Instant asked) {
        long changes = turn.changes();
        within.set(new Began(changes, asked));
        try {
            return new Known<>(changes, reading.get());
        } finally {
            within.remove();
        }
    }

    /**
     * The same, for what depends on nothing but the database and {@code what}: after a change it is read once more before anybody asks, where
     * it was asked for lately ({@link ReadAhead}).
     *
     * @param reading gives the same at any time as long as nothing changes, so it may hold nothing that was read before
     */
    public <T> T ahead(Object what, Supplier<T> reading) {
        Began outermost = within.get();
        // What is read ahead asks for what it reads itself; nobody has looked at that since.
        Instant now = outermost == null ? clock.instant() : outermost.asked();
        synchronized (asked) {
            asked.merge(what, new Asked(reading, now), Asked::later);
        }
        return of(what, reading, now);
    }

    /** What may be read ahead and was asked for within this time, the latest first: each to be run in a transaction of its own. */
    List<Runnable> askedWithin(Duration time) {
        Instant since = clock.instant().minus(time);
        List<Runnable> wanted = new ArrayList<>();
        synchronized (asked) {
            asked.forEach((what, one) -> {
                if (!one.at().isBefore(since)) {
                    wanted.add(() -> of(what, one.reading(), one.at()));
                }
            });
        }
        Collections.reverse(wanted);
        return wanted;
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

    /** As many as are kept; the one that nobody asked for longest goes first. */
    private static final class Latest<V> extends LinkedHashMap<Object, V> {

        @Serial
        private static final long serialVersionUID = 1;

        private final int most;

        private Latest(int most) {
            super(most, 0.75f, true);
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, V> eldest) {
            return size() > most;
        }
    }

    /** After so many changes, and when it was asked for. */
    private record Began(long changes, Instant asked) {}

    /** How it is read, and when it was asked for last. */
    private record Asked(Supplier<?> reading, Instant at) {

        private Asked later(Asked other) {
            return other.at.isBefore(at) ? this : other;
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
