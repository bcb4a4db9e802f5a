package patinary.survival;

import java.util.Collection;
import java.util.List;

/**
 * The counts that all estimates are made of: for each day on which a stay ended, how many were at risk just before, and how
 * they ended. Sales of a day come before what is still open on it.
 */
final class RiskTable {

    /** @param atRisk stays that could have sold on this day */
    record Row(int day, int atRisk, int sold, int withdrawn, int open) {

        int left() {
            return sold + withdrawn;
        }

        int ended(Exit exit) {
            return switch (exit) {
                case SOLD -> sold;
                case WITHDRAWN -> withdrawn;
                case OPEN -> open;
            };
        }
    }

    private final List<Row> rows;

    private RiskTable(List<Row> rows) {
        this.rows = rows;
    }

    static RiskTable of(Collection<Stay> stays) {
        return new RiskTable(stays.stream()
                .mapToInt(Stay::days)
                .distinct()
                .sorted()
                .mapToObj(day -> row(stays, day))
                .toList());
    }

    List<Row> rows() {
        return rows;
    }

    private static Row row(Collection<Stay> stays, int day) {
        int atRisk = 0;
        int[] ended = new int[Exit.values().length];
        for (Stay stay : stays) {
            if (stay.atRisk(day)) {
                atRisk++;
                if (stay.days() == day) {
                    ended[stay.exit().ordinal()]++;
                }
            }
        }
        return new Row(
                day, atRisk, ended[Exit.SOLD.ordinal()], ended[Exit.WITHDRAWN.ordinal()], ended[Exit.OPEN.ordinal()]);
    }
}
