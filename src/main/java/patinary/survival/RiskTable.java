package patinary.survival;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
        AtRisk atRisk = new AtRisk(stays);
        Map<Integer, int[]> ended = new TreeMap<>();
        for (Stay stay : stays) {
            int[] counts = ended.computeIfAbsent(stay.days(), day -> new int[Exit.values().length]);
            if (stay.atRisk(stay.days())) {
                counts[stay.exit().ordinal()]++;
            }
        }
        return new RiskTable(ended.entrySet().stream()
                .map(day -> row(day.getKey(), atRisk.on(day.getKey()), day.getValue()))
                .toList());
    }

    List<Row> rows() {
        return rows;
    }

    private static Row row(int day, int atRisk, int[] ended) {
        return new Row(
                day, atRisk, ended[Exit.SOLD.ordinal()], ended[Exit.WITHDRAWN.ordinal()], ended[Exit.OPEN.ordinal()]);
    }
}
