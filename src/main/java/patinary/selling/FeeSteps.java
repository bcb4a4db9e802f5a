package patinary.selling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * Percentages that change with the size of what they are taken of.
 *
 * @param steps from the lowest up; the first begins at zero
 * @param onWhole whether the step that is reached holds for the whole base; else each holds for what lies between it and
 *     the next
 */
record FeeSteps(List<Step> steps, boolean onWhole) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** A percentage and the amount above which it holds. */
    record Step(Amount above, Percent percent) {}

    Amount part(Amount base, RoundingMode rounding) {
        return Amount.of(
                exact(BigDecimal.valueOf(base.minor())).setScale(0, rounding).longValueExact());
    }

    /** The part in minor units, not rounded; of a base that need not be whole either. */
    BigDecimal exact(BigDecimal base) {
        BigDecimal hundredths = onWhole ? base.multiply(reached(base).percent().value()) : between(base);
        return hundredths.divide(HUNDRED);
    }

    private Step reached(BigDecimal base) {
        Step reached = steps.get(0);
        for (Step step : steps) {
            if (base.compareTo(BigDecimal.valueOf(step.above().minor())) > 0) {
                reached = step;
            }
        }
        return reached;
    }

    private BigDecimal between(BigDecimal base) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < steps.size(); i++) {
            BigDecimal from = BigDecimal.valueOf(steps.get(i).above().minor());
            BigDecimal to = i + 1 < steps.size()
                    ? base.min(BigDecimal.valueOf(steps.get(i + 1).above().minor()))
                    : base;
            if (to.compareTo(from) > 0) {
                sum = sum.add(to.subtract(from).multiply(steps.get(i).percent().value()));
            }
        }
        return sum;
    }
}
