package patinary.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static patinary.survival.CheckValues.assertLike;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against R's package survival, and by hand. */
class SurvivalCurveTest {

    @ParameterizedTest
    @CsvSource({
        "freireich, 6-MP",
        "freireich, placebo",
        "aml, Maintained",
        "aml, Nonmaintained",
        "lung, all",
        "lung, male",
        "lung, female",
        "tiny-naive, all",
        "edge-cases, even-uncensored",
        "edge-cases, ten-uncensored",
        "edge-cases, all-unsold",
        "edge-cases, one-sold",
        "edge-cases, one-unsold",
        "edge-cases, tie-sale-and-censoring",
        "edge-cases, ends-at-half",
        "edge-cases, same-day-sale",
        "edge-cases, flat-upper-tail"
    })
    void isTheCurveOfTheReference(String example, String group) {
        List<SurvivalCurve.Step> steps = SurvivalCurve.of(CheckValues.stays(example + "-observations", group))
                .steps();
        List<CSVRecord> expected = CheckValues.read(example + "-expected", "group", group);

        assertThat(steps).hasSameSizeAs(expected);
        for (int i = 0; i < steps.size(); i++) {
            assertStep(steps.get(i), expected.get(i));
        }
    }

    private static void assertStep(SurvivalCurve.Step step, CSVRecord row) {
        String what = row.get("group") + " day " + step.day();
        assertThat(step.day()).isEqualTo(Integer.parseInt(row.get("time")));
        assertThat(step.atRisk()).as(what).isEqualTo(Integer.parseInt(row.get("n_risk")));
        assertThat(step.sold()).as(what).isEqualTo(Integer.parseInt(row.get("n_event")));
        assertThat(step.notKnown()).as(what).isEqualTo(Integer.parseInt(row.get("n_censor")));
        assertLike(step.unsold(), row.get("survival"), what);
        assertLike(step.standardError(), row.get("std_err"), what);
        assertLike(Math.sqrt(step.greenwood()), row.get("std_err_log"), what);
        assertLike(step.limits(Limits.LOG).low(), row.get("lower_log"), what);
        assertLike(step.limits(Limits.LOG).high(), row.get("upper_log"), what);
        assertLike(step.limits(Limits.LOG_LOG).low(), row.get("lower_loglog"), what);
        assertLike(step.limits(Limits.LOG_LOG).high(), row.get("upper_loglog"), what);
        assertLike(step.limits(Limits.PLAIN).low(), row.get("lower_plain"), what);
        assertLike(step.limits(Limits.PLAIN).high(), row.get("upper_plain"), what);
    }

    @Test
    void hasTheMediansAndMeansOfTheReference() {
        for (CSVRecord row : CheckValues.read("km-summary-expected")) {
            SurvivalCurve curve =
                    SurvivalCurve.of(CheckValues.stays(row.get("example") + "-observations", row.get("group")));
            String what = row.get("example") + " " + row.get("group");
            Quantile median = curve.median(Limits.LOG);
            assertLike(median.day(), row.get("median"), what);
            assertLike(median.low(), row.get("median_lower_log"), what);
            assertLike(median.high(), row.get("median_upper_log"), what);
            assertLike(curve.median(Limits.LOG_LOG).low(), row.get("median_lower_loglog"), what);
            assertLike(curve.median(Limits.LOG_LOG).high(), row.get("median_upper_loglog"), what);
            assertLike(curve.quantile(0.25, Limits.LOG).day(), row.get("q25"), what);
            assertLike(curve.quantile(0.25, Limits.LOG).low(), row.get("q25_lower_log"), what);
            assertLike(curve.quantile(0.75, Limits.LOG).day(), row.get("q75"), what);
            assertLike(curve.quantile(0.75, Limits.LOG).high(), row.get("q75_upper_log"), what);
            RestrictedMean mean = curve.meanWithin(Integer.parseInt(row.get("rmean_tau")));
            assertLike(mean.days(), row.get("rmean"), what);
            assertLike(mean.standardError(), row.get("rmean_se"), what);
            RestrictedMean toLast = curve.meanWithin(Integer.parseInt(row.get("last_time")));
            assertLike(toLast.days(), row.get("rmean_to_last_time"), what);
            assertLike(toLast.standardError(), row.get("rmean_to_last_time_se"), what);
        }
    }

    @Test
    void keepsToTheRuleForFlatStretchesAndTinyGroups() {
        for (CSVRecord row : CheckValues.read("edge-cases-medians")) {
            Quantile median = SurvivalCurve.of(CheckValues.stays("edge-cases-observations", row.get("group")))
                    .median(Limits.LOG);
            assertLike(median.day(), row.get("median_print"), row.get("group"));
            assertLike(median.low(), row.get("median_lower_log"), row.get("group"));
            assertLike(median.high(), row.get("median_upper_log"), row.get("group"));
        }
    }

    @Test
    void saysOfTwelvePiecesWhatTheReferenceSays() {
        SurvivalCurve curve = SurvivalCurve.of(CheckValues.stays("tiny-naive-observations", "all"));
        Map<String, String> wanted = CheckValues.read("tiny-naive-scalars").stream()
                .collect(Collectors.toMap(row -> row.get("quantity"), row -> row.get("value")));

        Quantile log = curve.median(Limits.LOG);
        Quantile logLog = curve.median(Limits.LOG_LOG);
        RestrictedMean mean = curve.meanWithin(60);
        Map.of(
                        "km_median", log.day(),
                        "km_median_lower_log", log.low(),
                        "km_median_upper_log", log.high(),
                        "km_median_lower_loglog", logLog.low(),
                        "km_median_upper_loglog", logLog.high(),
                        "km_sold_within_60_days", 1 - curve.unsold(60),
                        "rmean_60", mean.days(),
                        "rmean_60_se", mean.standardError())
                .forEach((what, value) -> assertLike(value, Objects.requireNonNull(wanted.get(what)), what));
    }

    /** Twelve pieces by hand: the mean of those sold, 22.2 days, would be less than half of what the curve says. */
    @Test
    void countsWhatHasNotSoldYet() {
        SurvivalCurve curve = SurvivalCurve.of(CheckValues.stays("tiny-naive-observations", "all"));

        assertThat(curve.unsold(4)).isEqualTo(1);
        assertThat(curve.unsold(5)).isCloseTo(11.0 / 12, within(1e-12));
        assertThat(1 - curve.unsold(60)).isCloseTo(0.476190, within(5e-7));
        assertThat(curve.median(Limits.LOG_LOG).isReached()).isFalse();
        assertThat(curve.meanWithin(60).days()).isCloseTo(42.53, within(0.005));
        assertThat(curve.meanWithin(60).standardError()).isCloseTo(6.20, within(0.005));
    }

    /**
     * By hand: a piece first watched at its day 10 is not at risk at day 5, nor on day 10 itself. At day 5 three are at risk,
     * at day 20 two of the others and the late one.
     */
    @Test
    void takesAPieceOnlyFromTheDayItWasWatched() {
        SurvivalCurve curve = SurvivalCurve.of(List.of(
                Stay.of(5, Exit.SOLD), Stay.of(20, Exit.SOLD), Stay.of(30, Exit.OPEN), new Stay(10, 40, Exit.SOLD)));

        assertThat(curve.steps()).extracting(SurvivalCurve.Step::atRisk).containsExactly(3, 3, 2, 1);
        assertThat(curve.unsold(20)).isCloseTo(2.0 / 3 * 2 / 3, within(1e-12));
    }

    @Test
    void isEmptyForNoPiece() {
        SurvivalCurve curve = SurvivalCurve.of(List.of());

        assertThat(curve.steps()).isEmpty();
        assertThat(curve.median(Limits.LOG_LOG).isReached()).isFalse();
        assertThat(curve.meanWithin(90).days()).isEqualTo(90);
        assertThat(curve.limits(10, Limits.LOG_LOG)).isEqualTo(Span.UNKNOWN);
    }

    @Test
    void withAllSoldIsTheShareOfThoseStillThere() {
        SurvivalCurve curve = SurvivalCurve.of(IntStream.rangeClosed(1, 40)
                .mapToObj(day -> Stay.of(day, Exit.SOLD))
                .toList());

        IntStream.rangeClosed(0, 40)
                .forEach(day -> assertThat(curve.unsold(day)).isCloseTo((40.0 - day) / 40, within(1e-12)));
        assertThat(curve.meanWithin(40).days()).isCloseTo(20.5, within(1e-9));
    }

    @Test
    void aStayDoesNotEndBeforeItBegins() {
        assertThatIllegalArgumentException().isThrownBy(() -> Stay.of(-1, Exit.SOLD));
        assertThatIllegalArgumentException().isThrownBy(() -> new Stay(5, 4, Exit.OPEN));
    }
}
