package patinary.taxyear;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is open in a year.
 *
 * @param link where it is put right
 * @param what its name; empty where the page has its own words for it
 * @param onDay since when, or the day it is dated; null where it is about the year as a whole
 * @param times how often, where it is one thing that was used several times
 * @param amountMinor what is open, in minor units; null where that is no amount
 */
record ClosingRow(
        ClosingItem item,
        String link,
        String what,
        @Nullable LocalDate onDay,
        int times,
        @Nullable Long amountMinor) {

    static ClosingRow of(ClosingItem item, String link, String what, @Nullable LocalDate onDay, long amountMinor) {
        return new ClosingRow(item, link, what, onDay, 1, amountMinor);
    }
}
