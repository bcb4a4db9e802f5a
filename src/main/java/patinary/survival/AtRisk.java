package patinary.survival;

import java.util.Collection;

/** How many of some stays could still have sold on a day; asked of two sorted rows instead of every stay. */
final class AtRisk {

    private final int[] ends;
    private final int[] lateStarts;

    AtRisk(Collection<Stay> stays) {
        ends = stays.stream().mapToInt(Stay::days).sorted().toArray();
        lateStarts = stays.stream()
                .mapToInt(Stay::from)
                .filter(from -> from > 0)
                .sorted()
                .toArray();
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
