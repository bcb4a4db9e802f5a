package patinary.insight;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The quarters of the year, all years together, as they stand among the groups of a page: from 1 to 4. */
final class Quarters {

    static final int ALL = 4;

    private static final int MONTHS = 3;

    private Quarters() {}

    /** The group of a day on a page: its quarter, or the one without a name where there is none. */
    static List<String> groups(@Nullable LocalDate day) {
        return List.of(day == null ? "" : of(day));
    }

    static String of(LocalDate day) {
        return String.valueOf((day.getMonthValue() - 1) / MONTHS + 1);
    }
}
