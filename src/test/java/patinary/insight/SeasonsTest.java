package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import patinary.survival.Exit;
import patinary.survival.Stay;

/** Against values computed with R 4.2.2; src/test/resources/patinary/insight/README.md says where they are from. */
class SeasonsTest {

    private static final LocalDate TODAY = LocalDate.of(2025, 12, 31);

    @Test
    void theLimitsOfACountAreExact() {
        for (CSVRecord row : GivenRows.of("poisson-exact-expected")) {
            long count = Long.parseLong(row.get("x"));
            GivenRows.assertLike(Seasons.lowest(count), Double.parseDouble(row.get("lower")), "lower of " + count);
            GivenRows.assertLike(Seasons.highest(count), Double.parseDouble(row.get("upper")), "upper of " + count);
        }
    }

    @Test
    void theMadeUpYear() {
        List<CSVRecord> rows = GivenRows.of("seasonality-expected");
        Map<String, Double> scalars = GivenRows.scalars("seasonality-scalars");
        Seasons seasons = Seasons.of(column(rows, "sales"), column(rows, "piece_days"), 365);
        GivenRows.assertLike(seasons.difference(), scalars.get("chisq"), "difference");
        GivenRows.assertLike(
                ChiSquaredDistribution.of(11).survivalProbability(seasons.difference()),
                scalars.get("p_chisq"),
                "chance by chi-square");
        assertThat(seasons.chance())
                .as("drawn, as most months expect fewer than five")
                .isCloseTo(scalars.get("p_monte_carlo_100000_seed7"), within(0.005));
        double[] expected =
                seasons.months().stream().mapToDouble(Seasons.Month::expected).toArray();
        GivenRows.assertLike(
                Seasons.between(expected, seasons.difference(), 47),
                scalars.get("between_month_variance"),
                "variance between months");
        GivenRows.assertLike(
                1 / Seasons.between(expected, seasons.difference(), 47), scalars.get("gamma_shape_k"), "kappa");
        for (int m = 0; m < rows.size(); m++) {
            Seasons.Month month = seasons.months().get(m);
            CSVRecord row = rows.get(m);
            GivenRows.assertLike(month.expected(), number(row, "expected"), "expected");
            GivenRows.assertLike(month.ratio(), number(row, "ratio"), "ratio");
            GivenRows.assertLike(month.low(), number(row, "ratio_lower_exact"), "lower limit");
            GivenRows.assertLike(month.high(), number(row, "ratio_upper_exact"), "upper limit");
            GivenRows.assertLike(month.drawn(), number(row, "ratio_shrunk"), "drawn");
        }
    }

    /** 47 sales of one year are too early; of two years, November and December may be called fast. */
    @Test
    void nothingIsSaidTooEarly() {
        List<CSVRecord> rows = GivenRows.of("seasonality-expected");
        long[] sales = column(rows, "sales");
        long[] days = column(rows, "piece_days");
        Seasons early = Seasons.of(sales, days, 365);
        assertThat(early.told()).isFalse();
        assertThat(early.months()).allMatch(month -> month.words() == Seasons.Words.NOTHING);
        Seasons late = Seasons.of(sales, days, 730);
        assertThat(late.speaks()).isTrue();
        assertThat(late.months().stream().filter(month -> month.words() == Seasons.Words.FASTER))
                .extracting(Seasons.Month::number)
                .containsExactly(11, 12);
        days[6] = 0;
        sales[6] = 0;
        assertThat(Seasons.of(sales, days, 730).told()).as("no day in July").isFalse();
    }

    /** Two hundred made-up shops whose months are alike: advice of a month in fewer than one of twenty. */
    @Test
    void monthsThatAreAlikeAreSeldomToldApart() {
        int told = 0;
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            long[] sales = new long[12];
            for (int sale = 0; sale < 80; sale++) {
                sales[random.nextInt(12)]++;
            }
            long[] days = new long[12];
            Arrays.fill(days, 700);
            told += Seasons.of(sales, days, 730).months().stream()
                            .anyMatch(month -> month.words() != Seasons.Words.NOTHING)
                    ? 1
                    : 0;
        }
        assertThat(told).isLessThan(10);
    }

    @Test
    void anEmptyShopHasNoMonths() {
        Seasons none = Seasons.of(new long[12], new long[12], 0);
        assertThat(none.told()).isFalse();
        assertThat(none.chance()).isEqualTo(1);
    }

    /**
     * Invented: on offer from 30 January to its sale on 3 February with a pause on the 1st: 31 January, 2 and 3 February. A set
     * of two from 29 December counts once: 30 and 31 December.
     */
    @Test
    void daysOnOfferByHand() {
        UUID box = new UUID(0, 1);
        UUID offer = new UUID(1, 1);
        UUID set = new UUID(1, 2);
        LocalDate sold = LocalDate.of(2025, 2, 3);
        OfferFacts facts = new OfferFacts(
                List.of(
                        new OfferFacts.Spell(box, offer, new Span(LocalDate.of(2025, 1, 30), sold)),
                        new OfferFacts.Spell(new UUID(0, 2), set, new Span(LocalDate.of(2025, 12, 29), null)),
                        new OfferFacts.Spell(new UUID(0, 3), set, new Span(LocalDate.of(2025, 12, 29), null))),
                Map.of(offer, List.of(new Span(LocalDate.of(2025, 2, 1), LocalDate.of(2025, 2, 2)))),
                List.of(new OfferFacts.Sold(box, sold, "Stall", false, 1, 1, 1)));
        Seasons seasons = SeasonDays.of(facts, TODAY).seasons();
        assertThat(seasons.months())
                .extracting(Seasons.Month::days)
                .containsExactly(1L, 2L, 0L, 0L, 0L, 0L, 0L, 0L, 0L, 0L, 0L, 2L);
        assertThat(seasons.months().get(1).sales()).isEqualTo(1);
    }

    /** Of six first offered in June three sold within 60 days; July has four; of December none is 60 days old. */
    @Test
    void cohortsOfAMonth() {
        List<Round> rounds = new java.util.ArrayList<>();
        for (int i = 0; i < 6; i++) {
            rounds.add(round(LocalDate.of(2025, 6, 10), i < 3 ? Stay.of(20 + i, Exit.SOLD) : Stay.of(200, Exit.OPEN)));
            rounds.add(round(LocalDate.of(2025, 12, 10), Stay.of(21, Exit.OPEN)));
        }
        for (int i = 0; i < 4; i++) {
            rounds.add(round(LocalDate.of(2025, 7, 1), Stay.of(5, Exit.SOLD)));
        }
        List<Cohort> cohorts = Cohort.of(rounds, TODAY);
        assertThat(cohorts).extracting(Cohort::offered).containsExactly(6, 4, 6);
        assertThat(cohorts).extracting(Cohort::young).containsExactly(true, false, false);
        assertThat(cohorts.get(1).sold()).as("too few").isNull();
        assertThat(cohorts.get(2).sold().value()).isEqualByComparingTo("50.0");
        assertThat(cohorts.get(2).low().value())
                .isLessThan(cohorts.get(2).high().value());
    }

    private static Round round(LocalDate from, Stay stay) {
        return new Round(UUID.randomUUID(), UUID.randomUUID(), null, from, stay, "");
    }

    private static long[] column(List<CSVRecord> rows, String name) {
        return rows.stream().mapToLong(row -> Long.parseLong(row.get(name))).toArray();
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
