package patinary.survival;

import java.util.Arrays;
import java.util.Collection;

/** How many of some stays could still have sold on a day; asked of two sorted rows instead of every stay. */
final class AtRisk {

    private final int[] ends;
    private final int[] lateStarts;

    AtRisk(Collection<Stay> stays) {
        ends = new int[stays.size()];
        int[] starts = new int[stays.size()];
        int all = 0;
        int late = 0;
        for (Stay stay : stays) {
            ends[all++] = stay.days();
            if (stay.from() > 0) {
                starts[late++] = stay.from();
            }
        }
        lateStarts = Arrays.copyOf(starts, late);
        Arrays.sort(ends);
        Arrays.sort(lateStarts);
    }

    /** Those that end on the day or later, less those that were not watched yet; of these none has ended. */
    int on(int day) {
        return notBelow(ends, day) - notBelow(lateStarts, day);
    }

    private static int notBelow(int[] sorted, int day) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < day) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return sorted.length - low;
    }
}
