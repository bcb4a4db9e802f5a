package patinary.survival;

/**
 * One stretch on offer, in whole days: a sale on the day of the offer is day 0.
 *
 * @param from the day from which the stay was watched: 0 for one recorded from its start; more for a piece that was on offer
 *     before the records began, which counts only from the age it had then (left truncation)
 * @param days the day on which it ended, or the age it has today
 */
public record Stay(int from, int days, Exit exit) {

    /** @throws IllegalArgumentException where days lie before the beginning */
    public Stay {
        if (from < 0 || days < from) {
            throw new IllegalArgumentException("A stay from day " + from + " to day " + days);
        }
    }

    /** A stay watched from its start. */
    public static Stay of(int days, Exit exit) {
        return new Stay(0, days, exit);
    }

    /** Whether it could still have sold on a day; what ends on the day itself is counted, what is first watched then is not. */
    boolean atRisk(int day) {
        return days >= day && (from == 0 || from < day);
    }
}
