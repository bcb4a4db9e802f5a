package patinary.survival;

import java.util.ArrayList;
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
        AtRisk atRisk = new AtRisk(stays);
        int kinds = Exit.values().length + 1;
        // The day and how a stay ended are one number, so that they are sorted without objects; what was not watched
        // yet counts as none of them.
        long[] ends = stays.stream()
                .mapToLong(stay -> (long) stay.days() * kinds
                        + (stay.atRisk(stay.days()) ? stay.exit().ordinal() : kinds - 1))
                .sorted()
                .toArray();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < ends.length; ) {
            int day = (int) (ends[i] / kinds);
            int[] ended = new int[kinds];
            for (; i < ends.length && ends[i] / kinds == day; i++) {
                ended[(int) (ends[i] % kinds)]++;
            }
            rows.add(row(day, atRisk.on(day), ended));
        }
        return new RiskTable(List.copyOf(rows));
    }

    List<Row> rows() {
        return rows;
    }

    private static Row row(int day, int atRisk, int[] ended) {
        return new Row(
                day, atRisk, ended[Exit.SOLD.ordinal()], ended[Exit.WITHDRAWN.ordinal()], ended[Exit.OPEN.ordinal()]);
    }
}
