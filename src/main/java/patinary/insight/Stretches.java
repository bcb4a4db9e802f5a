package patinary.insight;

import java.time.LocalDate;
import java.util.Arrays;

/**
 * Days as a few stretches that do not touch, made of some that may overlap, less others. It looks at the ends of stretches alone and at no
 * day by itself, so that ten years on offer cost as little as one week.
 */
final class Stretches {

    /** What happens at an end; a day and what happens on it are one number, so that the ends are sorted once and without objects. */
    private static final int ON = 0;

    private static final int OFF = 1;
    private static final int PAUSED = 2;
    private static final int RESUMED = 3;
    private static final int KINDS = 4;

    private static final int ENDS = 8;

    private long[] ends = new long[ENDS];
    private int size;

    /** Takes one stretch after the other, as days since 1970. */
    interface Taker {

        /** @param until the first day after it */
        void take(long from, long until);
    }

    /** Adds the days from one up to another, without that one; none where they stand the wrong way round. */
    void add(LocalDate from, LocalDate until) {
        put(from, ON, until, OFF);
    }

    /** Takes days away, whether they are added before or afterwards. */
    void remove(LocalDate from, LocalDate until) {
        put(from, PAUSED, until, RESUMED);
    }

    /** Each stretch of what is left, the earliest first. */
    void each(Taker taker) {
        long[] sorted = Arrays.copyOf(ends, size);
        Arrays.sort(sorted);
        int[] open = new int[KINDS];
        long since = 0;
        boolean on = false;
        for (int i = 0; i < size; ) {
            long day = Math.floorDiv(sorted[i], KINDS);
            for (; i < size && Math.floorDiv(sorted[i], KINDS) == day; i++) {
                open[Math.floorMod(sorted[i], KINDS)]++;
            }
            boolean now = open[ON] > open[OFF] && open[PAUSED] == open[RESUMED];
            if (on && !now) {
                taker.take(since, day);
            } else if (now && !on) {
                since = day;
            }
            on = now;
        }
    }

    /** How many days are left. */
    int days() {
        int[] days = new int[1];
        each((from, until) -> days[0] += Math.toIntExact(until - from));
        return days[0];
    }

    private void put(LocalDate from, int begins, LocalDate until, int stops) {
        if (from.isBefore(until)) {
            if (size + 2 > ends.length) {
                ends = Arrays.copyOf(ends, 2 * ends.length);
            }
            ends[size++] = from.toEpochDay() * KINDS + begins;
            ends[size++] = until.toEpochDay() * KINDS + stops;
        }
    }
}
