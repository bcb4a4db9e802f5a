package patinary.listing;

import java.util.ArrayList;
import java.util.List;

/** What two texts have in common, line by line, and what only one of them has: the longest common subsequence. */
final class LineDiff {

    /** Where a line stands. */
    enum Side {
        BOTH,
        OLD,
        NEW
    }

    /** A line of either text. */
    record Line(Side side, String text) {}

    private LineDiff() {}

    /** All lines, in order; without those of one side they are the other text. */
    static List<Line> between(String before, String after) {
        List<String> old = before.lines().toList();
        List<String> fresh = after.lines().toList();
        int[][] common = common(old, fresh);
        List<Line> lines = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < old.size() || j < fresh.size()) {
            if (i < old.size() && j < fresh.size() && old.get(i).equals(fresh.get(j))) {
                lines.add(new Line(Side.BOTH, old.get(i++)));
                j++;
            } else if (j == fresh.size() || i < old.size() && common[i + 1][j] >= common[i][j + 1]) {
                lines.add(new Line(Side.OLD, old.get(i++)));
            } else {
                lines.add(new Line(Side.NEW, fresh.get(j++)));
            }
        }
        return lines;
    }

    /** How many lines the ends of the two texts have in common, from each pair of lines on. */
    private static int[][] common(List<String> old, List<String> fresh) {
        int[][] common = new int[old.size() + 1][fresh.size() + 1];
        for (int i = old.size() - 1; i >= 0; i--) {
            for (int j = fresh.size() - 1; j >= 0; j--) {
                common[i][j] = old.get(i).equals(fresh.get(j))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }
}
