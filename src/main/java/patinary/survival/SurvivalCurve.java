package patinary.survival;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The share still unsold after each day, if nothing were ever withdrawn: the estimate of Kaplan and Meier (J. Am. Stat. Assoc.
 * 53, 1958) with the variance of Greenwood. Stays that ended otherwise than by a sale count as not known from then on.
 */
public final class SurvivalCurve {

    /** A share is one half when it is nearer than this: the square root of the machine's precision. */
    private static final double ALIKE = 1.5e-8;

    private static final double HALF = 0.5;

    /**
     * One step of the curve.
     *
     * @param unsold the share unsold after this day
     * @param greenwood the sum of d / (n (n − d)), the variance of the logarithm of the share; infinite at a share of 0
     */
    public record Step(int day, int atRisk, int sold, int notKnown, double unsold, double greenwood) {

        /** The standard error of the share unsold; NaN at a share of 0. */
        public double standardError() {
            return unsold * Math.sqrt(greenwood);
        }

        /** The 95 % limits of the share unsold; NaN where there are none. */
        public Span limits(Limits kind) {
            return kind.of(unsold, greenwood);
        }
    }

    private final List<Step> steps;

    private SurvivalCurve(List<Step> steps) {
        this.steps = steps;
    }

    public static SurvivalCurve of(Collection<Stay> stays) {
        List<Step> steps = new ArrayList<>();
        double unsold = 1;
        double greenwood = 0;
        for (RiskTable.Row row : RiskTable.of(stays).rows()) {
            double n = row.atRisk();
            if (row.sold() > 0) {
                unsold *= 1 - row.sold() / n;
                greenwood += row.sold() / (n * (n - row.sold()));
            }
            steps.add(new Step(row.day(), row.atRisk(), row.sold(), row.withdrawn() + row.open(), unsold, greenwood));
        }
        return new SurvivalCurve(List.copyOf(steps));
    }

    public List<Step> steps() {
        return steps;
    }

    /** The share unsold after a day. */
    public double unsold(int day) {
        double share = 1;
        for (Step step : steps) {
            if (step.day() > day) {
                break;
            }
            share = step.unsold();
        }
        return share;
    }

    /** Whether nothing is left unsold after the last step, so that what comes after it is known. */
    public boolean isAllSold() {
        return !steps.isEmpty() && steps.get(steps.size() - 1).unsold() < ALIKE;
    }

    /** The 95 % limits of the share unsold after a day; NaN before the first sale. */
    public Span limits(int day, Limits kind) {
        Span limits = Span.UNKNOWN;
        for (Step step : steps) {
            if (step.day() > day) {
                break;
            }
            limits = step.limits(kind);
        }
        return limits;
    }

    /** The day after which half are sold, with its 95 % limits by Brookmeyer and Crowley (Biometrics 38, 1982). */
    public Quantile median(Limits kind) {
        return quantile(HALF, kind);
    }

    /** The day after which a share is sold; NaN where the curve, or a limit, does not come so far. */
    public Quantile quantile(double sold, Limits kind) {
        double unsold = 1 - sold;
        return new Quantile(
                crossing(unsold, Step::unsold),
                crossing(unsold, step -> step.limits(kind).low()),
                crossing(unsold, step -> step.limits(kind).high()));
    }

    /** The middle of the flat stretch where the line is at the level, or the day on which it falls below. */
    private double crossing(double level, ToDoubleFunction<Step> line) {
        double first = Double.NaN;
        for (Step step : steps) {
            double share = line.applyAsDouble(step);
            if (share < level - ALIKE) {
                return Double.isNaN(first) ? step.day() : (first + step.day()) / 2;
            }
            if (Double.isNaN(first) && share <= level + ALIKE) {
                first = step.day();
            }
        }
        return first;
    }

    /** The mean days on offer within the first {@code days}: the area under the curve up to there. */
    public RestrictedMean meanWithin(int days) {
        double area = area(0, days);
        double variance = 0;
        for (Step step : steps) {
            double n = step.atRisk();
            if (step.day() <= days && step.sold() > 0 && step.sold() < step.atRisk()) {
                double after = area(step.day(), days);
                variance += after * after * step.sold() / (n * (n - step.sold()));
            }
        }
        return new RestrictedMean(area, Math.sqrt(variance));
    }

    private double area(int from, int until) {
        double area = 0;
        double share = 1;
        int day = 0;
        for (Step step : steps) {
            if (step.day() >= until) {
                break;
            }
            area += share * Math.max(0, step.day() - Math.max(day, from));
            share = step.unsold();
            day = step.day();
        }
        return area + share * (until - Math.max(day, from));
    }
}
