package patinary.selling;

import java.time.LocalDate;
import java.util.List;

/**
 * How many days a piece was to be had: from the first day on offer to the day it was sold, withdrawn or today, days of a
 * pause left out. Something sold on its first day was on offer for no full day. docs/handbook/sales.md.
 */
public final class DaysOnOffer {

    private DaysOnOffer() {}

    /** @param to the day it sold, was withdrawn, or today */
    public static long count(LocalDate from, LocalDate to, List<Offer.Pause> pauses) {
        return from.datesUntil(to.isBefore(from) ? from : to)
                .filter(day -> pauses.stream().noneMatch(pause -> covers(pause, day)))
                .count();
    }

    static boolean covers(Offer.Pause pause, LocalDate day) {
        return !day.isBefore(pause.pausedFrom()) && (pause.pausedTo() == null || !day.isAfter(pause.pausedTo()));
    }
}
