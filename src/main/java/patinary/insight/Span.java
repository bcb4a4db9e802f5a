package patinary.insight;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of days.
 *
 * @param from the first day
 * @param until the first day after it, or null where it has not ended
 */
record Span(LocalDate from, @Nullable LocalDate until) {

    /** Whether any of its days lies between the two, both included; a stretch of no days counts as its first day. */
    boolean touches(LocalDate first, LocalDate last) {
        return !from.isAfter(last)
                && (until == null || until.isAfter(first) || from.equals(until) && !from.isBefore(first));
    }

    /** Whether it has begun and not ended on this day. */
    boolean covers(LocalDate day) {
        return !from.isAfter(day) && (until == null || until.isAfter(day));
    }
}
