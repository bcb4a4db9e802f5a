package patinary.insight;

import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;

/** Reads what the months say: of the year, and of first offers. */
@Repository
@Transactional(readOnly = true)
class SeasonReport {

    /**
     * The page of the months.
     *
     * @param cohorts what was first offered in each month
     */
    record Answer(SeasonDays days, Seasons seasons, List<Cohort> cohorts) {}

    private record Asking(List<Only> chosen, LocalDate today) {}

    private final Moves moves;
    private final Speeds speeds;
    private final Readings readings;

    SeasonReport(Moves moves, Speeds speeds, Readings readings) {
        this.moves = moves;
        this.speeds = speeds;
        this.readings = readings;
    }

    Answer answer(Narrowing narrowing, LocalDate today) {
        return narrowing.kept(readings, new Asking(narrowing.chosen(), today), those -> {
            SeasonDays days = SeasonDays.of(those.of(moves.offers()), today);
            return new Answer(days, days.seasons(), Cohort.of(those.of(speeds.rounds(today)), today));
        });
    }
}
