package patinary.insight;

import static patinary.insight.GivenRows.assertLike;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import patinary.survival.Exit;
import patinary.survival.Limits;
import patinary.survival.Quantile;
import patinary.survival.RestrictedMean;
import patinary.survival.Stay;
import patinary.survival.SurvivalCurve;

/**
 * Two hundred pieces of which the truth is known: what the curve says of them, and what the mean of those sold would, against R 4.2.2;
 * src/test/resources/patinary/insight/README.md says where they are from.
 */
class NaiveBiasTest {

    private final List<CSVRecord> pieces = GivenRows.of("naive-bias-observations");

    @Test
    void theCurveSaysWhatTheReferenceSays() {
        SurvivalCurve curve =
                SurvivalCurve.of(pieces.stream().map(NaiveBiasTest::stay).toList());
        Quantile log = curve.median(Limits.LOG);
        Quantile logLog = curve.median(Limits.LOG_LOG);
        RestrictedMean mean = curve.meanWithin(180);
        Map<String, Double> said = new LinkedHashMap<>();
        said.put("n", (double) pieces.size());
        said.put("km_median", log.day());
        said.put("km_median_lower_log", log.low());
        said.put("km_median_upper_log", log.high());
        said.put("km_median_lower_loglog", logLog.low());
        said.put("km_median_upper_loglog", logLog.high());
        said.put("km_sold_within_90_days", 1 - curve.unsold(90));
        said.put("km_rmean_180", mean.days());
        said.put("km_rmean_180_se", mean.standardError());
        assertAll(said);
    }

    @Test
    void whatForgetsThoseThatWaitSaysWhatTheReferenceSaysItWould() {
        Map<String, Double> said = new LinkedHashMap<>();
        said.put("sold", (double) pieces.stream().filter(NaiveBiasTest::isSold).count());
        said.put("mean_days_sold_only", meanDays(NaiveBiasTest::isSold));
        said.put("mean_time_on_sale_all_pieces", meanDays(piece -> true));
        said.put(
                "naive_sold_within_90_days_over_all_listed",
                (double) pieces.stream()
                                .filter(piece -> isSold(piece) && days(piece) <= 90)
                                .count()
                        / pieces.size());
        assertAll(said);
    }

    private double meanDays(Predicate<CSVRecord> those) {
        return pieces.stream()
                .filter(those)
                .mapToInt(NaiveBiasTest::days)
                .average()
                .orElseThrow();
    }

    private static void assertAll(Map<String, Double> said) {
        Map<String, Double> wanted = GivenRows.scalars("naive-bias-expected");
        said.forEach((what, value) -> assertLike(value, Objects.requireNonNull(wanted.get(what), what), what));
    }

    private static Stay stay(CSVRecord piece) {
        return Stay.of(days(piece), isSold(piece) ? Exit.SOLD : Exit.OPEN);
    }

    private static int days(CSVRecord piece) {
        return Integer.parseInt(piece.get("time"));
    }

    private static boolean isSold(CSVRecord piece) {
        return piece.get("event").equals("1");
    }
}
