package patinary.insight;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The clock of days to sell: the days on which a piece was to be had before the day it sold, each counted once however
 * many offers stood at the same time, and without the days of a pause. A piece that sells on the day it is offered took
 * no days.
 */
final class DaysOnOffer {

    private DaysOnOffer() {}

    /**
     * How many days it took.
     *
     * @param offers stretches on offer
     * @param pauses stretches on which it was not to be had
     * @param since the day from which to count: that of an earlier sale which came back, or long ago
     * @param sold the day it sold
     * @return nothing where no offer stood before or on that day, as the days are then not known
     */
    static Optional<Integer> until(Collection<Span> offers, Collection<Span> pauses, LocalDate since, LocalDate sold) {
        Set<LocalDate> days = new HashSet<>();
        boolean known = false;
        for (Span offer : offers) {
            LocalDate end = earlier(offer.until() == null ? sold : offer.until(), sold);
            if (!offer.from().isAfter(sold) && !offer.from().isBefore(since)) {
                known = true;
                days.addAll(days(offer.from(), end));
            }
        }
        for (Span pause : pauses) {
            LocalDate end = earlier(pause.until() == null ? sold : pause.until(), sold);
            days.removeAll(Set.copyOf(days(pause.from(), end)));
        }
        return known ? Optional.of(days.size()) : Optional.empty();
    }

    private static Collection<LocalDate> days(LocalDate from, LocalDate end) {
        return from.isBefore(end) ? from.datesUntil(end).toList() : Set.of();
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
