package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static patinary.insight.GivenRows.assertLike;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Against values computed with R 4.2.2; src/test/resources/patinary/insight/README.md says where they are from. */
class ShrunkenShareTest {

    private static final double TOLERANCE = 1e-9;

    @Test
    void unequalGroupsAreDrawnTowardsAll() {
        List<CSVRecord> rows = GivenRows.of("shrinkage-unequal-n-expected");
        ShrunkenShare shares =
                ShrunkenShare.of(rows.stream().map(ShrunkenShareTest::tries).toList());
        Map<String, Double> scalars = GivenRows.scalars("shrinkage-unequal-n-scalars");
        assertLike(shares.worth(), scalars.get("M"), "M");
        assertPrior(shares, scalars.get("rho"), scalars.get("alpha"), scalars.get("beta"));
        assertThat(rows).hasSize(8);
        assertThat(rows)
                .as("in order by the drawn share, as the reference ranks them")
                .allSatisfy(row -> assertThat(rows.stream()
                                .filter(other -> shares.share(tries(other)).value()
                                        > shares.share(tries(row)).value())
                                .count())
                        .isEqualTo(Long.parseLong(row.get("rank_shrunk")) - 1));
        for (CSVRecord row : rows) {
            Estimate share = shares.share(tries(row));
            assertLike(share.value(), Double.parseDouble(row.get("shrunk")), "shrunk");
            assertLike(share.low(), Double.parseDouble(row.get("post_lower")), "post_lower");
            assertLike(share.high(), Double.parseDouble(row.get("post_upper")), "post_upper");
        }
        assertLike(shares.share(new Tries(0, 0)).value(), scalars.get("mu"), "mu");
    }

    /** What the groups were drawn towards: the prior of a group of which nothing is known. */
    static void assertPrior(ShrunkenShare shares, double rho, double alpha, double beta) {
        double all = shares.share(Tries.NONE).value();
        assertLike(1 / (1 + shares.worth()), rho, "rho");
        assertLike(all * shares.worth(), alpha, "alpha");
        assertLike((1 - all) * shares.worth(), beta, "beta");
    }

    /** By Jeffreys' prior, as a group is told where it stands alone. */
    @Test
    void aShareThatStandsAloneHasTheLimitsOfTheReference() {
        List<CSVRecord> rows = GivenRows.of("/patinary/bench/binomial-intervals-expected");
        assertThat(rows).hasSizeGreaterThan(10);
        for (CSVRecord row : rows) {
            Tries tries = new Tries(Long.parseLong(row.get("n")), Long.parseLong(row.get("x")));
            Estimate share = ShrunkenShare.whole(tries, 1);
            assertLike(share.low(), number(row, "jeffreys_lower"), "lower " + row);
            assertLike(share.high(), number(row, "jeffreys_upper"), "upper " + row);
        }
    }

    /** The count this page makes: pieces offered at least 90 days ago, sold within 90 days or not. */
    @Test
    void onlyPiecesThatHadTheirFullTimeAreCounted() {
        Tries tries = Tries.NONE;
        for (CSVRecord row : GivenRows.of("naive-bias-observations")) {
            boolean inTime =
                    Integer.parseInt(row.get("time")) <= 90 && row.get("event").equals("1");
            if (Integer.parseInt(row.get("age")) >= 90) {
                tries = tries.plus(new Tries(1, inTime ? 1 : 0));
            }
        }
        assertThat(tries).isEqualTo(new Tries(151, 58));
        Map<String, Double> scalars = GivenRows.scalars("naive-bias-expected");
        assertLike(
                tries.share(),
                scalars.get("sold_within_90_days_among_age_90_or_more"),
                "of those with their full time");
    }

    /** By hand: every group sold exactly half, so the scatter is 0, rho below 0, and everybody gets the share of all. */
    @Test
    void groupsThatShowNoDifferenceGetTheShareOfAll() {
        ShrunkenShare shares = ShrunkenShare.of(List.of(new Tries(2, 1), new Tries(4, 2), new Tries(6, 3)));
        assertThat(shares.share(new Tries(2, 1)).value()).isEqualTo(0.5);
        assertThat(shares.share(new Tries(2, 1)).ownWeight()).isZero();
    }

    /** By hand: two groups are too few to learn from; 1 of 1 becomes (1 + ½) ÷ (1 + 1) = 0.75 by Jeffreys. */
    @Test
    void whereADifferenceCannotBeToldAGroupStandsAlone() {
        ShrunkenShare shares = ShrunkenShare.of(List.of(new Tries(1, 1), new Tries(9, 3)));
        assertThat(shares.share(new Tries(1, 1)).value()).isCloseTo(0.75, within(TOLERANCE));
        assertThat(shares.share(new Tries(0, 0)).value()).isCloseTo(0.4, within(TOLERANCE));
    }

    private static Tries tries(CSVRecord row) {
        return new Tries(Long.parseLong(row.get("listed")), Long.parseLong(row.get("sold")));
    }

    /** Two of two, none of three, one of one: as far apart as can be, so each stands alone, by Jeffreys 2.5 of 3. */
    @Test
    void groupsOfWhichAllOrNoneSoldStandAlone() {
        ShrunkenShare shares = ShrunkenShare.of(List.of(new Tries(2, 2), new Tries(3, 0), new Tries(1, 1)));
        assertThat(shares.share(new Tries(2, 2)).value()).isCloseTo(2.5 / 3, within(TOLERANCE));
        assertThat(shares.share(new Tries(3, 0)).low()).isZero();
        assertThat(shares.share(new Tries(2, 2)).high()).isEqualTo(1);
    }

    /** Twelve children each: the moments of the 6,115 families. */
    @Test
    void familiesOfTwelve() {
        List<Tries> families = GivenRows.of("saxony-observations").stream()
                .flatMap(row -> Collections.nCopies(
                        Integer.parseInt(row.get("families")), new Tries(12, Long.parseLong(row.get("males"))))
                        .stream())
                .toList();
        assertThat(families).hasSize(6115);
        ShrunkenShare shares = ShrunkenShare.of(families);
        Map<String, Double> scalars = GivenRows.scalars("saxony-expected");
        GivenRows.assertLike(shares.worth(), scalars.get("kleinman_M"), "worth");
        assertPrior(shares, scalars.get("kleinman_rho"), scalars.get("kleinman_alpha"), scalars.get("kleinman_beta"));
    }

    /** The distributions of the library that the sums of this package and of survival stand on. */
    @Test
    void quantilesOfTheLibrary() {
        for (CSVRecord row : GivenRows.of("quantiles-expected")) {
            double p = Double.parseDouble(row.get("p"));
            double value = switch (row.get("fun")) {
                case "normal_quantile" -> NormalDistribution.of(0, 1).inverseCumulativeProbability(p);
                case "chisq_quantile" ->
                    ChiSquaredDistribution.of(number(row, "a")).inverseCumulativeProbability(p);
                case "beta_quantile" ->
                    BetaDistribution.of(number(row, "a"), number(row, "b")).inverseCumulativeProbability(p);
                default -> ChiSquaredDistribution.of(number(row, "a")).survivalProbability(p);
            };
            double wanted = number(row, "value");
            assertThat(value).as(row.toString()).isCloseTo(wanted, within(Math.max(1e-15, Math.abs(wanted) * 1e-9)));
        }
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
