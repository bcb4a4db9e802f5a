package patinary.insight;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;

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
        Stretches days = new Stretches();
        boolean known = false;
        for (Span offer : offers) {
            if (!offer.from().isAfter(sold) && !offer.from().isBefore(since)) {
                known = true;
                days.add(offer.from(), end(offer, sold));
            }
        }
        for (Span pause : pauses) {
            days.remove(pause.from(), end(pause, sold));
        }
        return known ? Optional.of(days.days()) : Optional.empty();
    }

    private static LocalDate end(Span span, LocalDate sold) {
        LocalDate until = span.until();
        return until == null || until.isAfter(sold) ? sold : until;
    }
}
