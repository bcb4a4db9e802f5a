package patinary.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether months differ in how fast things sell, for the days on which something was on offer: docs/handbook/seasons.md. The months
 * of all years together.
 *
 * @param months January to December
 * @param difference the sum of squared differences from what was to be expected, each by what was to be expected
 * @param chance how often months that are alike differ at least so much
 * @param told whether there is enough to say anything of a month
 */
record Seasons(List<Month> months, double difference, double chance, boolean told) {

    static final int FEWEST_SALES = 60;
    static final int FEWEST_DAYS = 730;

    private static final int MONTHS = 12;
    private static final int DRAWS = 10_000;
    private static final long SEED = 12;
    private static final int FEW = 5;
    private static final double SELDOM = 0.05;
    private static final double TAIL = 0.025;

    /** What may be said of a month. */
    enum Words {
        FASTER,
        SLOWER,
        NOTHING
    }

    /**
     * One month of the year.
     *
     * @param days days on offer, added up over all pieces
     * @param expected sales to be expected in so many days
     * @param ratio sales by what was to be expected; NaN without a day on offer
     * @param low its exact 95 % limits
     * @param drawn the ratio drawn towards 1
     */
    record Month(
            int number,
            long sales,
            long days,
            double expected,
            double ratio,
            double low,
            double high,
            double drawn,
            Words words) {}

    /**
     * @param sales of each month
     * @param days on offer of each month
     * @param watched days from the first on offer to today
     */
    static Seasons of(long[] sales, long[] days, long watched) {
        double allSales = IntStream.range(0, MONTHS).mapToLong(m -> sales[m]).sum();
        double allDays = IntStream.range(0, MONTHS).mapToLong(m -> days[m]).sum();
        double[] expected = IntStream.range(0, MONTHS)
                .mapToDouble(m -> allDays == 0 ? 0 : allSales / allDays * days[m])
                .toArray();
        double difference = difference(sales, expected);
        boolean whole = IntStream.range(0, MONTHS).allMatch(m -> days[m] > 0);
        double chance = allSales == 0 || allDays == 0 ? 1 : chance(expected, difference, (int) allSales);
        boolean told = whole && allSales > 0 && (allSales >= FEWEST_SALES || watched >= FEWEST_DAYS);
        double between = between(expected, difference, allSales);
        List<Month> months = new ArrayList<>();
        for (int m = 0; m < MONTHS; m++) {
            months.add(month(m + 1, sales[m], days[m], expected[m], between, told && chance < SELDOM));
        }
        return new Seasons(List.copyOf(months), difference, chance, told);
    }

    /** Whether some month may be spoken of. */
    public boolean speaks() {
        return told && chance < SELDOM;
    }

    private static Month month(int number, long sales, long days, double expected, double between, boolean speaks) {
        double low = lowest(sales) / expected;
        double high = highest(sales) / expected;
        double drawn = between <= 0 ? 1 : (sales + 1 / between) / (expected + 1 / between);
        Words words = Words.NOTHING;
        if (speaks && expected > 0) {
            words = low > 1 ? Words.FASTER : high < 1 ? Words.SLOWER : Words.NOTHING;
        }
        return new Month(number, sales, days, expected, sales / expected, low, high, drawn, words);
    }

    /** Exact 95 % limits of a count (Garwood 1936). */
    static double lowest(long count) {
        return count == 0 ? 0 : ChiSquaredDistribution.of(2.0 * count).inverseCumulativeProbability(TAIL) / 2;
    }

    static double highest(long count) {
        return ChiSquaredDistribution.of(2.0 * count + 2).inverseSurvivalProbability(TAIL) / 2;
    }

    private static double difference(long[] sales, double[] expected) {
        double sum = 0;
        for (int m = 0; m < MONTHS; m++) {
            if (expected[m] > 0) {
                sum += (sales[m] - expected[m]) * (sales[m] - expected[m]) / expected[m];
            }
        }
        return sum;
    }

    /** How far months truly lie apart, by moments, as a variance of the ratio; zero where no difference shows. */
    static double between(double[] expected, double difference, double sales) {
        double squares = IntStream.range(0, MONTHS)
                .mapToDouble(m -> expected[m] * expected[m])
                .sum();
        double room = sales - (sales == 0 ? 0 : squares / sales);
        return room <= 0 ? 0 : Math.max(0, (difference - (MONTHS - 1)) / room);
    }

    /** By drawing where little is to be expected of most months, else by chi-square. */
    private static double chance(double[] expected, double difference, int sales) {
        long small = IntStream.range(0, MONTHS).filter(m -> expected[m] < FEW).count();
        return small > MONTHS / 2
                ? drawn(expected, difference, sales, new Random(SEED))
                : ChiSquaredDistribution.of(MONTHS - 1.0).survivalProbability(difference);
    }

    private static double drawn(double[] expected, double difference, int sales, Random random) {
        double[] upTo = new double[MONTHS];
        double sum = 0;
        for (int m = 0; m < MONTHS; m++) {
            sum += expected[m];
            upTo[m] = sum;
        }
        int asMuch = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            long[] months = new long[MONTHS];
            for (int sale = 0; sale < sales; sale++) {
                double at = random.nextDouble() * sum;
                int m = 0;
                while (m < MONTHS - 1 && upTo[m] <= at) {
                    m++;
                }
                months[m]++;
            }
            asMuch += difference(months, expected) >= difference - 1e-9 ? 1 : 0;
        }
        return (asMuch + 1.0) / (DRAWS + 1);
    }
}
