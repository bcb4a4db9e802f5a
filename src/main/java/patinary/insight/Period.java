package patinary.insight;

import java.time.LocalDate;
import patinary.web.Dates;

/**
 * The days that a page is of.
 *
 * @param first the first of them
 * @param last the last of them, not before the first
 */
record Period(LocalDate first, LocalDate last) {

    private static final int USUAL_DAYS = 365;

    /** What was asked for, or the last 365 days. A day that cannot be read is not asked for. */
    static Period asked(String from, String to, LocalDate today) {
        LocalDate last = Dates.read(to).orElse(today);
        LocalDate first = Dates.read(from).orElse(last.minusDays(USUAL_DAYS - 1L));
        return first.isAfter(last) ? new Period(last, last) : new Period(first, last);
    }
}
