package patinary.survival;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether groups sell at different speeds: the log-rank test (Harrington and Fleming 1982 with rho 0). Sales are compared with
 * what each group would have sold if all sold alike.
 *
 * @param sold sales of each group
 * @param expected what it would have sold at the speed of all
 * @param variance of the first group's sales; of the others likewise
 * @param statistic chi-square
 * @param freedom groups that could have sold anything, less one
 * @param chance how often groups that are alike differ at least so much
 */
public record LogRank(
        List<Integer> sold,
        List<Double> expected,
        List<Double> variance,
        double statistic,
        int freedom,
        double chance) {

    /** Compares groups of stays; what was withdrawn or is open counts as not known from then on. */
    public static LogRank of(List<? extends Collection<Stay>> groups) {
        int size = groups.size();
        int[] sold = new int[size];
        double[] expected = new double[size];
        double[][] variance = new double[size][size];
        AtRisk[] atRisk = groups.stream().map(AtRisk::new).toArray(AtRisk[]::new);
        long[] sales = sales(groups);
        double[] counts = new double[size];
        for (int i = 0; i < sales.length; ) {
            int day = (int) (sales[i] / size);
            int first = i;
            for (; i < sales.length && sales[i] / size == day; i++) {
                sold[(int) (sales[i] % size)]++;
            }
            for (int g = 0; g < size; g++) {
                counts[g] = atRisk[g].on(day);
            }
            addDay(counts, i - first, expected, variance);
        }
        int[] those = IntStream.range(0, size).filter(g -> expected[g] > 0).toArray();
        int freedom = Math.max(0, those.length - 1);
        double statistic = freedom == 0 ? 0 : statistic(those, sold, expected, variance);
        return new LogRank(
                IntStream.of(sold).boxed().toList(),
                IntStream.range(0, size).mapToObj(g -> expected[g]).toList(),
                IntStream.range(0, size).mapToObj(g -> variance[g][g]).toList(),
                statistic,
                freedom,
                freedom == 0 ? 1 : ChiSquaredDistribution.of(freedom).survivalProbability(statistic));
    }

    /** Every sale, by day: the day times the number of groups and the group are one number, so that they are sorted without objects. */
    private static long[] sales(List<? extends Collection<Stay>> groups) {
        long[] sales = new long[groups.stream().mapToInt(Collection::size).sum()];
        int count = 0;
        for (int g = 0; g < groups.size(); g++) {
            for (Stay stay : groups.get(g)) {
                if (stay.exit() == Exit.SOLD && stay.atRisk(stay.days())) {
                    sales[count++] = (long) stay.days() * groups.size() + g;
                }
            }
        }
        Arrays.sort(sales, 0, count);
        return Arrays.copyOf(sales, count);
    }

    private static void addDay(double[] atRisk, double sales, double[] expected, double[][] variance) {
        double all = 0;
        for (double group : atRisk) {
            all += group;
        }
        double spread = all > 1 ? sales * (all - sales) / (all - 1) : 0;
        for (int g = 0; g < atRisk.length; g++) {
            double share = all > 0 ? atRisk[g] / all : 0;
            expected[g] += sales * share;
            for (int other = 0; other < atRisk.length; other++) {
                double same = g == other ? 1 : 0;
                variance[g][other] += all > 1 ? spread * share * (same - atRisk[other] / all) : 0;
            }
        }
    }

    /** u' V⁻¹ u without the last group, whose difference the others' make up. */
    private static double statistic(int[] those, int[] sold, double[] expected, double[][] variance) {
        int size = those.length - 1;
        double[] difference = new double[size];
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            difference[i] = sold[those[i]] - expected[those[i]];
            double[] row = new double[size + 1];
            for (int j = 0; j < size; j++) {
                row[j] = variance[those[i]][those[j]];
            }
            row[size] = difference[i];
            rows.add(row);
        }
        double[] solved = LinearSystem.solve(rows.toArray(double[][]::new));
        double statistic = 0;
        for (int i = 0; i < size; i++) {
            statistic += difference[i] * solved[i];
        }
        return statistic;
    }
}
