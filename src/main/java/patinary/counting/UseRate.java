package patinary.counting;

import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * How much of a supply goes in a week. Uses come one after the other by chance (a Poisson process), each with its own
 * quantity; the interval of such a weighted sum is the gamma interval of Fay and Feuer, "Confidence intervals for directly
 * standardized rates: a method based on the gamma distribution", Statistics in Medicine 16 (1997) 791-801 (formula from
 * memory; with equal quantities it is the exact Poisson interval, Garwood 1936, which is checked).
 *
 * @param perWeek quantity in a week, in the supply's base unit
 * @param low lower end of the 95% interval
 * @param high upper end of it
 * @param uses how many uses it rests on
 */
record UseRate(double perWeek, double low, double high, int uses) {

    /** A shorter record, or fewer uses, says nothing worth planning by. */
    static final double FEWEST_WEEKS = 4;

    static final int FEWEST_USES = 3;

    private static final double TAIL = 0.025;

    /**
     * @param quantities of the uses, none below zero
     * @param weeks how long they were watched
     * @return nothing where there is too little to tell
     */
    static Optional<UseRate> of(double[] quantities, double weeks) {
        double sum = 0;
        double squares = 0;
        double largest = 0;
        int uses = 0;
        for (double quantity : quantities) {
            sum += quantity;
            squares += quantity * quantity;
            largest = Math.max(largest, quantity);
            uses += quantity > 0 ? 1 : 0;
        }
        if (weeks < FEWEST_WEEKS || uses < FEWEST_USES) {
            return Optional.empty();
        }
        return Optional.of(
                new UseRate(sum / weeks, lower(sum, squares) / weeks, upper(sum, squares, largest) / weeks, uses));
    }

    /** How long a stock lasts, in weeks: the middle, and from the fastest to the slowest use. */
    Weeks lasts(double stock) {
        double there = Math.max(0, stock);
        return new Weeks(there / perWeek, there / high, there / low);
    }

    /** Weeks that a stock lasts. */
    record Weeks(double middle, double atLeast, double atMost) {}

    private static double lower(double sum, double squares) {
        return squares
                / (2 * sum)
                * ChiSquaredDistribution.of(2 * sum * sum / squares).inverseCumulativeProbability(TAIL);
    }

    private static double upper(double sum, double squares, double largest) {
        double more = sum + largest;
        double moreSquares = squares + largest * largest;
        return moreSquares
                / (2 * more)
                * ChiSquaredDistribution.of(2 * more * more / moreSquares).inverseSurvivalProbability(TAIL);
    }
}
