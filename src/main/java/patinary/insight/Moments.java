package patinary.insight;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Sums of a group's figures, exact, so that groups can be added up.
 *
 * @param count how many figures
 * @param sum their sum
 * @param squares the sum of their squares
 */
record Moments(long count, BigDecimal sum, BigDecimal squares) {

    static final Moments NONE = new Moments(0, BigDecimal.ZERO, BigDecimal.ZERO);

    static Moments of(long... figures) {
        Moments moments = NONE;
        for (long figure : figures) {
            moments = moments.plus(of(BigDecimal.valueOf(figure)));
        }
        return moments;
    }

    static Moments of(BigDecimal figure) {
        return new Moments(1, figure, figure.multiply(figure));
    }

    Moments plus(Moments other) {
        return new Moments(count + other.count, sum.add(other.sum), squares.add(other.squares));
    }

    /** The mean; only of a group that is not empty. */
    double mean() {
        return sum.divide(BigDecimal.valueOf(count), MathContext.DECIMAL64).doubleValue();
    }

    /** The sum of squared distances from the mean; taken exactly, since the two squares are nearly alike. */
    double scatter() {
        if (count < 2) {
            return 0;
        }
        BigDecimal times = BigDecimal.valueOf(count);
        return times.multiply(squares)
                .subtract(sum.multiply(sum))
                .divide(times, MathContext.DECIMAL64)
                .max(BigDecimal.ZERO)
                .doubleValue();
    }
}
