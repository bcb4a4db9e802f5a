package patinary.insight;

import java.time.LocalDate;

/** The quarters of the year, all years together, as they stand among the groups of a page: from 1 to 4. */
final class Quarters {

    static final int ALL = 4;

    private static final int MONTHS = 3;

    private Quarters() {}

    static String of(LocalDate day) {
        return String.valueOf((day.getMonthValue() - 1) / MONTHS + 1);
    }
}
