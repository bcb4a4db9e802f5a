package patinary.counting;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How large her measures really are, from a few counts. What was used between two counts is taken as the sum, over the
 * measures of one supply, of what was noted in each, times that measure's own ratio, and chance. The ratios come from a
 * normal linear model with a normal-inverse-gamma prior: least squares weighted by how much chance a span holds, drawn
 * towards 1 as long as there is little to go by. Intervals are the central 95% of the posterior (Student's t for a ratio,
 * scaled inverse chi-square for the chance). Method: Gelman and others, Bayesian Data Analysis, 3rd edition, chapter 14
 * (from memory). The prior's numbers are judgement, no source; see the handbook, "How far her eye is off".
 */
final class TrueSizes {

    /** Before any count, a ratio is within about 0.25 and 1.75 of its noted size in most shops. */
    static final double PRIOR_SPREAD = 0.75;

    /** Before any count, one use is judged to about 30% of its size. */
    static final double PRIOR_CHANCE = 0.3;

    private static final double PRIOR_DEGREES = 3;
    private static final double TAIL = 0.025;

    private TrueSizes() {}

    /** A ratio of real to noted size with its 95% interval. */
    record Ratio(double ratio, double low, double high) {

        boolean leavesOutOne() {
            return low > 1 || high < 1;
        }
    }

    /**
     * What the counts tell.
     *
     * @param ratios one for each measure, as asked
     * @param chance by how much of its size one use differs from the others (a standard deviation), with its interval
     */
    record Told(List<Ratio> ratios, Ratio chance) {}

    /**
     * @param spans only spans that tell something
     * @param noted what was noted in each span: a row for each span, a column for each measure
     */
    static Told of(List<Span> spans, double[][] noted) {
        int measures = noted.length == 0 ? 0 : noted[0].length;
        double prior = PRIOR_CHANCE * PRIOR_CHANCE / (PRIOR_SPREAD * PRIOR_SPREAD);
        double[][] precision = new double[measures][measures];
        double[] right = new double[measures];
        double degrees = PRIOR_DEGREES + spans.size();
        double squares = PRIOR_DEGREES * PRIOR_CHANCE * PRIOR_CHANCE + prior * measures;
        for (int j = 0; j < measures; j++) {
            precision[j][j] = prior;
            right[j] = prior;
        }
        for (int i = 0; i < spans.size(); i++) {
            double weight = 1 / spread(spans.get(i));
            double used = spans.get(i).used();
            squares += used * used * weight;
            for (int j = 0; j < measures; j++) {
                right[j] += noted[i][j] * used * weight;
                for (int k = 0; k < measures; k++) {
                    precision[j][k] += noted[i][j] * noted[i][k] * weight;
                }
            }
        }
        double[][] covariance = Matrices.inverse(precision);
        double[] mean = Matrices.times(covariance, right);
        for (int j = 0; j < measures; j++) {
            squares -= mean[j] * right[j];
        }
        return told(mean, covariance, Math.max(squares, Double.MIN_NORMAL), degrees);
    }

    /** The variance of a span's use over that of one use of size one: the chance of its uses, and of reading off steps. */
    private static double spread(Span span) {
        double reading = span.step() * span.step() / 6;
        return span.squares() + reading / (PRIOR_CHANCE * PRIOR_CHANCE);
    }

    private static Told told(double[] mean, double[][] covariance, double squares, double degrees) {
        double reach = TDistribution.of(degrees).inverseSurvivalProbability(TAIL);
        List<Ratio> ratios = IntStream.range(0, mean.length)
                .mapToObj(j -> {
                    double half = reach * Math.sqrt(squares / degrees * covariance[j][j]);
                    return new Ratio(mean[j], Math.max(0, mean[j] - half), mean[j] + half);
                })
                .toList();
        ChiSquaredDistribution chi = ChiSquaredDistribution.of(degrees);
        return new Told(
                ratios,
                new Ratio(
                        Math.sqrt(squares / degrees),
                        Math.sqrt(squares / chi.inverseSurvivalProbability(TAIL)),
                        Math.sqrt(squares / chi.inverseCumulativeProbability(TAIL))));
    }
}
