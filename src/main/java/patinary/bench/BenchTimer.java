package patinary.bench;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A clock for the minutes of one stretch of work: started, paused and gone on with any number of times, stopped. It counts
 * from moments that are kept, so nothing has to stay open while it runs.
 *
 * @param started when the work began, or null while the clock is off
 * @param since when it last began to run, or null while it is paused or off
 * @param worked seconds worked before {@code since}; whole
 * @param changed when it was last tapped, by the clock of the device it was tapped on; of two states the later one holds
 */
record BenchTimer(@Nullable Instant started, @Nullable Instant since, long worked, Instant changed) {

    /** Longer than this without a pause is rather a forgotten clock than work (common practice, no source): it asks. */
    static final Duration PLAUSIBLE = Duration.ofHours(6);

    private static final int MINUTE = 60;

    BenchTimer {
        if (worked < 0 || started == null && (since != null || worked > 0)) {
            throw new IllegalArgumentException("A clock that is off has not counted");
        }
    }

    static BenchTimer off(Instant changed) {
        return new BenchTimer(null, null, 0, changed);
    }

    boolean isOn() {
        return started != null;
    }

    boolean isRunning() {
        return since != null;
    }

    /** Starts it, or goes on after a pause; a running one is left as it is, so that a second tap loses nothing. */
    BenchTimer go(Instant now) {
        if (isRunning()) {
            return this;
        }
        return new BenchTimer(started == null ? now : started, now, worked, now);
    }

    BenchTimer pause(Instant now) {
        return isRunning() ? new BenchTimer(started, null, seconds(now), now) : this;
    }

    /** Seconds worked until now. A clock that was set back counts nothing rather than less than nothing. */
    long seconds(Instant now) {
        return since == null
                ? worked
                : worked + Math.max(0, Duration.between(since, now).toSeconds());
    }

    /** Whole minutes, to the nearest, half up; anything begun is at least one. */
    int minutes(Instant now) {
        long seconds = seconds(now);
        long minutes = (seconds + MINUTE / 2) / MINUTE;
        return Math.toIntExact(seconds > 0 ? Math.max(1, minutes) : 0);
    }

    /** Hours, to the nearest, half up. */
    int hours(Instant now) {
        return (minutes(now) + MINUTE / 2) / MINUTE;
    }

    /** Whether to ask how long the work really was, instead of taking the clock's word. */
    boolean asks(Instant now) {
        return seconds(now) > PLAUSIBLE.toSeconds();
    }
}
