package patinary.selling;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * The prices at which the line of what remains bends or jumps: where a step of the fee is reached, and where the least
 * or the most begins to hold. Rounded tax moves a jump by a price or so, hence a few prices on either side of it are a
 * stretch of their own.
 */
final class Breaks {

    private static final long AROUND = 4;

    private final Terms terms;
    private final SortedSet<Long> breaks = new TreeSet<>();

    Breaks(Terms terms) {
        this.terms = terms;
    }

    /** The first price of each stretch, zero among them. */
    SortedSet<Long> find(long highest) {
        breaks.add(0L);
        FeeRule rule = terms.rule();
        if (rule != null) {
            rule.steps().steps().forEach(step -> around(reaching(rule, step.above()), highest));
            for (long from : new TreeSet<>(breaks)) {
                bend(rule, from, rule.least(), highest);
                bend(rule, from, rule.most(), highest);
            }
        }
        return breaks;
    }

    /** The base grows in a straight line with the price. */
    private BigDecimal reaching(FeeRule rule, Amount above) {
        BigDecimal atZero = terms.exactBase(rule, BigDecimal.ZERO);
        BigDecimal growth = terms.exactBase(rule, BigDecimal.ONE).subtract(atZero);
        return BigDecimal.valueOf(above.minor()).subtract(atZero).divide(growth, MathContext.DECIMAL64);
    }

    /** Where the fee, on the line that begins here, comes to a least or a most. */
    private void bend(FeeRule rule, long from, @Nullable Amount bound, long highest) {
        if (bound == null) {
            return;
        }
        BigDecimal here = terms.exactFeeUnbounded(rule, BigDecimal.valueOf(from));
        BigDecimal growth =
                terms.exactFeeUnbounded(rule, BigDecimal.valueOf(from + 1)).subtract(here);
        if (growth.signum() > 0) {
            BigDecimal after = BigDecimal.valueOf(bound.minor()).subtract(here).divide(growth, MathContext.DECIMAL64);
            if (after.signum() > 0) {
                around(after.add(BigDecimal.valueOf(from)), highest);
            }
        }
    }

    private void around(BigDecimal price, long highest) {
        boolean near = price.compareTo(BigDecimal.valueOf(-AROUND)) > 0;
        if (near && price.compareTo(BigDecimal.valueOf(highest)) < 0) {
            long at = price.setScale(0, RoundingMode.FLOOR).longValueExact();
            breaks.add(Math.max(0, at - AROUND));
            breaks.add(at + AROUND + 1);
        }
    }
}
