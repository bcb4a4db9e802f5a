package patinary.insight;

import static patinary.insight.GivenRows.assertLike;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The published example of drawing shares towards all: eighteen players, forty-five tries each, judged by the rest of their season
 * (Efron and Morris 1975 and 1977). What the pages do is held to its reference, and set beside the two estimates of James and Stein that the
 * example was made for; all values computed with R 4.2.2, src/test/resources/patinary/insight/README.md says where they are from.
 */
class SteinTest {

    private static final int TRIES = 45;
    private static final List<CSVRecord> EXPECTED = GivenRows.of("efron-morris-expected");
    private static final Map<String, Double> SCALARS = GivenRows.scalars("efron-morris-scalars");
    private static final List<Tries> PLAYERS = GivenRows.of("efron-morris-observations").stream()
            .map(row -> new Tries(Long.parseLong(row.get("at_bats")), Long.parseLong(row.get("hits"))))
            .toList();
    private static final double[] RAW =
            PLAYERS.stream().mapToDouble(Tries::share).toArray();
    private static final double[] LATER = column("remaining_average");

    @Test
    void thePagesDrawThemAsTheReferenceDoes() {
        ShrunkenShare shares = ShrunkenShare.of(PLAYERS);
        assertLike(shares.worth(), scalar("moment_M"), "worth");
        ShrunkenShareTest.assertPrior(shares, scalar("moment_rho"), scalar("moment_alpha"), scalar("moment_beta"));
        double[] drawn = PLAYERS.stream()
                .mapToDouble(player -> shares.share(player).value())
                .toArray();
        assertAll(drawn, "beta_binomial_moment");
        PLAYERS.forEach(player ->
                assertLike(shares.share(player).ownWeight(), scalar("moment_weight_on_own_rate"), "own weight"));
        assertLike(squared(RAW, LATER), scalar("sse_mle_y"), "squared errors of the raw shares");
        assertLike(squared(drawn, LATER), scalar("sse_beta_binomial_y"), "squared errors of the drawn ones");
    }

    /** In the scale of the shares: 0.212 of how far a player is from the mean of all, 0.265. */
    @Test
    void theEstimateOf1977() {
        double mean = Arrays.stream(RAW).average().orElseThrow();
        double variance = mean * (1 - mean) / TRIES;
        assertLike(mean, scalar("grand_mean_y"), "mean of all");
        assertLike(variance, scalar("sigma2_y"), "variance of a share");
        assertLike(apart(RAW), scalar("sum_sq_dev_y"), "how far they lie apart");
        double kept = 1 - lost(RAW, variance);
        assertLike(kept, scalar("c_1977_exact_hits"), "what is kept");
        double[] drawn = each(RAW, share -> mean + kept * (share - mean));
        assertAll(drawn, "js_1977");
        assertLike(squared(drawn, LATER), scalar("sse_js1977_y"), "squared errors");
        double[] printed = each(RAW, share -> Math.round(share * 1000) / 1000.0);
        double all = Arrays.stream(printed).average().orElseThrow();
        assertLike(
                1 - lost(printed, all * (1 - all) / TRIES),
                scalar("c_1977_from_3_decimal_averages"),
                "what is kept, from the averages as printed");
    }

    /** In a scale in which every share has the variance one. */
    @Test
    void theEstimateOf1975() {
        double root = Math.sqrt(TRIES);
        DoubleUnaryOperator even = share -> root * Math.asin(2 * share - 1);
        double[] x = each(RAW, even);
        double[] theta = each(LATER, even);
        double mean = Arrays.stream(x).average().orElseThrow();
        assertAll(x, "x_transformed");
        assertAll(theta, "theta_transformed");
        assertLike(mean, scalar("x_bar"), "mean of all");
        assertLike(apart(x), scalar("V"), "how far they lie apart");
        double lost = lost(x, 1);
        assertLike(lost, scalar("B_1975"), "what is lost");
        assertLike(1 - lost, scalar("one_minus_B_1975"), "what is kept");
        double[] drawn = each(x, value -> mean + (1 - lost) * (value - mean));
        assertAll(drawn, "js_transformed");
        double[] back = each(drawn, value -> (Math.sin(value / root) + 1) / 2);
        assertAll(back, "js_1975_back_transformed");
        assertLike(squared(x, theta), scalar("sse_mle_transformed"), "squared errors of the raw ones");
        assertLike(squared(drawn, theta), scalar("sse_js_transformed"), "squared errors");
        assertLike(squared(x, theta) / squared(drawn, theta), scalar("efficiency_transformed"), "how much better");
        assertLike(squared(back, LATER), scalar("sse_js1975_y"), "squared errors in the scale of the shares");
    }

    /** (k − 3) times the variance, of how far they lie apart. */
    private static double lost(double[] values, double variance) {
        return (values.length - 3) * variance / apart(values);
    }

    private static double apart(double... values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        return Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
    }

    private static double squared(double[] values, double[] truth) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += (values[i] - truth[i]) * (values[i] - truth[i]);
        }
        return sum;
    }

    private static double[] each(double[] values, DoubleUnaryOperator what) {
        return Arrays.stream(values).map(what).toArray();
    }

    private static void assertAll(double[] values, String column) {
        double[] wanted = column(column);
        for (int i = 0; i < values.length; i++) {
            assertLike(values[i], wanted[i], column + " of player " + i);
        }
    }

    private static double[] column(String name) {
        return EXPECTED.stream()
                .mapToDouble(row -> Double.parseDouble(row.get(name)))
                .toArray();
    }

    private static double scalar(String name) {
        return SCALARS.get(name);
    }
}
