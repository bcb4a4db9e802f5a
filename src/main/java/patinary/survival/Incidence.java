package patinary.survival;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

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
            double withdrawnError) {}

    private final List<Step> steps;

    private Incidence(List<Step> steps) {
        this.steps = steps;
    }

    public static Incidence of(Collection<Stay> stays) {
        List<RiskTable.Row> rows = RiskTable.of(stays).rows();
        double[] stillOn = stillOn(rows);
        double[] sold = share(rows, stillOn, Exit.SOLD);
        double[] withdrawn = share(rows, stillOn, Exit.WITHDRAWN);
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
                    error(rows, stillOn, sold, Exit.SOLD, i),
                    error(rows, stillOn, withdrawn, Exit.WITHDRAWN, i)));
        }
        return new Incidence(List.copyOf(steps));
    }

    public List<Step> steps() {
        return steps;
    }

    /** The share sold by a day. */
    public double sold(int day) {
        double share = 0;
        for (Step step : steps) {
            if (step.day() > day) {
                break;
            }
            share = step.sold();
        }
        return share;
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

    /** Marubini and Valsecchi (1995), the formula from memory; it gives the errors of the reference implementation. */
    private static double error(List<RiskTable.Row> rows, double[] stillOn, double[] share, Exit exit, int last) {
        double variance = 0;
        for (int i = 0; i <= last; i++) {
            RiskTable.Row row = rows.get(i);
            double n = row.atRisk();
            double ended = row.ended(exit);
            double ahead = share[last] - share[i];
            double before = before(stillOn, i);
            if (row.left() > 0 && row.left() < row.atRisk()) {
                variance += ahead * ahead * row.left() / (n * (n - row.left()));
            }
            if (ended > 0) {
                variance += before * before * ended * (n - ended) / (n * n * n);
                variance -= 2 * ahead * before * ended / (n * n);
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }
}
