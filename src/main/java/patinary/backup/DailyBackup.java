package patinary.backup;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;

/**
 * When a backup is due. It is made once a day, from an hour on; where the machine was off at that hour, as soon as it is on again.
 *
 * @param hour the hour of the shop's day
 * @param zone where the shop is
 */
record DailyBackup(int hour, ZoneId zone) {

    /** How long a failure is left alone, so that a full disk does not make the program try without end. */
    static final Duration PAUSE = Duration.ofHours(1);

    /**
     * Whether one is to be made.
     *
     * @param lastTry when the last one was begun, or null before the first
     * @param wasGood whether that one was good
     */
    boolean isDue(Instant now, @Nullable Instant lastTry, boolean wasGood) {
        if (lastTry == null || lastTry.isBefore(lastTime(now))) {
            return true;
        }
        return !wasGood && !lastTry.plus(PAUSE).isAfter(now);
    }

    /** When it was last time to. In an hour that the change to summer time leaves out, an hour later. */
    private Instant lastTime(Instant now) {
        ZonedDateTime today = now.atZone(zone);
        Instant time = on(today);
        return time.isAfter(now) ? on(today.minusDays(1)) : time;
    }

    private Instant on(ZonedDateTime day) {
        return day.toLocalDate().atTime(hour, 0).atZone(zone).toInstant();
    }
}
