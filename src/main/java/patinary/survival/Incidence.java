package patinary.survival;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What happened: the share sold and the share withdrawn by each day, by Aalen and Johansen. The two and the share still on
 * offer add up to one, which the two curves of Kaplan and Meier do not. Standard errors by the delta method.
 */
public final class Incidence {

    /** @param stillOn the share on offer after this day */
    public record Step(
            int day,
            int atRisk,
            int soldCount,
            int withdrawnCount,
            double stillOn,
            double sold,
            double withdrawn,
            double soldError,
            double withdrawnError) {

        /**
         * The 95 % limits of the share sold, NaN where there are none. They are put around the share not sold, as those of a curve are: where
         * nothing was withdrawn they are the limits of the curve of Kaplan and Meier.
         */
        public Span soldLimits(Limits kind) {
            double rest = 1 - sold;
            if (rest < ALIKE) {
                return Span.UNKNOWN;
            }
            Span around = kind.of(rest, Math.pow(soldError / rest, 2));
            return new Span(1 - around.high(), 1 - around.low());
        }
    }

    private static final double ALIKE = 1e-12;

    private final List<Step> steps;

    private Incidence(List<Step> steps) {
        this.steps = steps;
    }

    public static Incidence of(Collection<Stay> stays) {
        List<RiskTable.Row> rows = RiskTable.of(stays).rows();
        double[] stillOn = stillOn(rows);
        double[] sold = share(rows, stillOn, Exit.SOLD);
        double[] withdrawn = share(rows, stillOn, Exit.WITHDRAWN);
        double[] soldError = errors(rows, stillOn, sold, Exit.SOLD);
        double[] withdrawnError = errors(rows, stillOn, withdrawn, Exit.WITHDRAWN);
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            RiskTable.Row row = rows.get(i);
            steps.add(new Step(
                    row.day(),
                    row.atRisk(),
                    row.sold(),
                    row.withdrawn(),
                    stillOn[i],
                    sold[i],
                    withdrawn[i],
                    soldError[i],
                    withdrawnError[i]));
        }
        return new Incidence(List.copyOf(steps));
    }

    public List<Step> steps() {
        return steps;
    }

    /** The share sold by a day. */
    public double sold(int day) {
        return upTo(day).map(Step::sold).orElse(0.0);
    }

    /** The 95 % limits of the share sold by a day; NaN before the first sale. */
    public Span soldLimits(int day, Limits kind) {
        return upTo(day).map(step -> step.soldLimits(kind)).orElse(Span.UNKNOWN);
    }

    private Optional<Step> upTo(int day) {
        Optional<Step> last = Optional.empty();
        for (Step step : steps) {
            if (step.day() > day) {
                break;
            }
            last = Optional.of(step);
        }
        return last;
    }

    /** The first day by which at least a share of all is sold, or NaN. */
    public double daySold(double share) {
        return steps.stream()
                .filter(step -> step.sold() >= share)
                .mapToDouble(Step::day)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static double[] stillOn(List<RiskTable.Row> rows) {
        double[] stillOn = new double[rows.size()];
        double share = 1;
        for (int i = 0; i < stillOn.length; i++) {
            RiskTable.Row row = rows.get(i);
            if (row.left() > 0) {
                share *= 1 - (double) row.left() / row.atRisk();
            }
            stillOn[i] = share;
        }
        return stillOn;
    }

    private static double before(double[] stillOn, int i) {
        return i == 0 ? 1 : stillOn[i - 1];
    }

    private static double[] share(List<RiskTable.Row> rows, double[] stillOn, Exit exit) {
        double[] share = new double[rows.size()];
        double sum = 0;
        for (int i = 0; i < share.length; i++) {
            RiskTable.Row row = rows.get(i);
            if (row.ended(exit) > 0) {
                sum += before(stillOn, i) * row.ended(exit) / row.atRisk();
            }
            share[i] = sum;
        }
        return share;
    }

    /**
     * Marubini and Valsecchi (1995), the formula from memory; it gives the errors of the reference implementation. Each day it adds up
     * over all days before how far the share has come since: with the share going on by a step, these sums go on by what they had, so that
     * no day is looked at twice.
     */
    private static double[] errors(List<RiskTable.Row> rows, double[] stillOn, double[] share, Exit exit) {
        double[] errors = new double[rows.size()];
        double left = 0;
        double leftAhead = 0;
        double leftAheadSquared = 0;
        double ended = 0;
        double endedAhead = 0;
        double own = 0;
        for (int i = 0; i < errors.length; i++) {
            double step = share[i] - (i == 0 ? 0 : share[i - 1]);
            leftAheadSquared += step * (2 * leftAhead + step * left);
            leftAhead += step * left;
            endedAhead += step * ended;
            RiskTable.Row row = rows.get(i);
            double n = row.atRisk();
            double those = row.ended(exit);
            double before = before(stillOn, i);
            if (row.left() > 0 && row.left() < row.atRisk()) {
                left += row.left() / (n * (n - row.left()));
            }
            if (those > 0) {
                ended += before * those / (n * n);
                own += before * before * those * (n - those) / (n * n * n);
            }
            errors[i] = Math.sqrt(Math.max(0, leftAheadSquared + own - 2 * endedAhead));
        }
        return errors;
    }
}
