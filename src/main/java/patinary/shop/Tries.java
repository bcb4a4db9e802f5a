package patinary.shop;

import java.time.Duration;
import java.time.Instant;

/**
 * What is remembered of failed tries under one name or from one address.
 *
 * @param failures how many in a row; forgotten a day after the last
 * @param last when the last was
 * @param until the end of the pause that followed it
 */
record Tries(int failures, Instant last, Instant until) {

    /** After these a mistake has a pause. */
    static final int FREE = 4;

    static final Duration FORGET = Duration.ofHours(24);

    private static final int MOST_DOUBLINGS = 20;

    static Tries first(Instant moment) {
        return new Tries(1, moment, moment);
    }

    boolean isPause(Instant moment) {
        return moment.isBefore(until);
    }

    /** One more failure; from the fifth on each doubles the pause, from a second up to the longest. */
    Tries oneMore(Instant moment, Duration longest) {
        if (last.plus(FORGET).isBefore(moment)) {
            return first(moment);
        }
        return new Tries(failures + 1, moment, moment.plus(pause(failures + 1, longest)));
    }

    private static Duration pause(int failures, Duration longest) {
        if (failures <= FREE) {
            return Duration.ZERO;
        }
        Duration grown = Duration.ofSeconds(1L << Math.min(failures - FREE - 1, MOST_DOUBLINGS));
        return grown.compareTo(longest) < 0 ? grown : longest;
    }
}
