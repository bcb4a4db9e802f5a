package patinary.invented;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** The ten years in which everything of an invented shop happens. */
final class Span {

    static final LocalDate FIRST = LocalDate.of(2016, 1, 1);
    static final LocalDate LAST = LocalDate.of(2025, 12, 31);
    static final int DAYS = (int) ChronoUnit.DAYS.between(FIRST, LAST) + 1;
    static final int MONTHS = 120;
    static final int QUARTERS = 40;

    private Span() {}

    static boolean holds(LocalDate day) {
        return !day.isAfter(LAST);
    }

    /** The months since the first, from 0. */
    static int month(LocalDate day) {
        return (day.getYear() - FIRST.getYear()) * 12 + day.getMonthValue() - 1;
    }

    static int quarter(LocalDate day) {
        return month(day) / 3;
    }

    static LocalDate firstOfQuarter(int quarter) {
        return FIRST.plusMonths(3L * quarter);
    }

    static LocalDate lastOfQuarter(int quarter) {
        return firstOfQuarter(quarter + 1).minusDays(1);
    }
}
