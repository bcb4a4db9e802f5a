package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.shop.Aims;
import patinary.survival.Exit;
import patinary.survival.Limits;
import patinary.survival.Quantile;
import patinary.survival.Stay;
import patinary.survival.SurvivalCurve;

/**
 * Made-up shops of which the truth is known, to see how good the figures are. Its main prints the tables of
 * docs/handbook/how-good-the-figures-are.md; AdviceSimulationTest runs fewer of the same shops.
 */
final class AdviceSimulation {

    static final long SEED = 20_251;

    private static final int YEAR = 365;
    private static final int LATELY = 180;

    private AdviceSimulation() {}

    /** What is said of the days to sell: true median, mean of the sold ones, and our median over many shops. */
    record Days(double truth, double meanOfSold, double ourMedian) {}

    /** How often the limits of the median hold the truth, and how often there is no upper one. */
    record Coverage(double holds, double open) {}

    /** How often a like group is called faster, and faster or slower. */
    record FalseWords(double faster, double either) {}

    /** What is lost by a choice, as a share of the best there was: by the advice, by what sold last, by the raw mean. */
    record Regret(double advice, double soldLast, double rawMean, double noAdvice) {}

    public static void main(String[] args) {
        Days days = days(2_000, 60, 180);
        print(
                "days to sell: true median %.1f, mean of the sold %.1f, our median %.1f",
                days.truth(), days.meanOfSold(), days.ourMedian());
        for (int pieces : new int[] {8, 20, 60}) {
            Coverage coverage = coverage(4_000, pieces, 120);
            print(
                    "%d pieces: limits hold %.1f %%, open %.1f %%",
                    pieces, 100 * coverage.holds(), 100 * coverage.open());
        }
        for (int pieces : new int[] {8, 20, 60}) {
            FalseWords words = falseWords(4_000, pieces);
            print(
                    "5 like groups of %d: called faster in %.1f %% of shops, either in %.1f %%",
                    pieces, 100 * words.faster(), 100 * words.either());
        }
        for (int pieces : new int[] {8, 20, 60}) {
            Regret regret = regret(2_000, pieces);
            print(
                    "about %d pieces a group: lost by the advice %.1f %%, by what sold last %.1f %%, by the raw mean %.1f %%; no advice in %.1f %% of shops",
                    pieces,
                    100 * regret.advice(),
                    100 * regret.soldLast(),
                    100 * regret.rawMean(),
                    100 * regret.noAdvice());
        }
    }

    private static void print(String text, Object... figures) {
        System.out.println(String.format(Locale.ROOT, text, figures));
    }

    /** Days to sale are exponential, rounded up; what was offered lies back up to a year, evenly. */
    private static List<Stay> stays(Random random, int pieces, double mean) {
        List<Stay> stays = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            int days = (int) Math.ceil(-Math.log(1 - random.nextDouble()) * mean);
            int age = 1 + random.nextInt(YEAR);
            stays.add(days <= age ? Stay.of(days, Exit.SOLD) : Stay.of(age, Exit.OPEN));
        }
        return stays;
    }

    static Days days(int shops, int pieces, double mean) {
        Random random = new Random(SEED);
        double means = 0;
        double[] medians = new double[shops];
        for (int shop = 0; shop < shops; shop++) {
            List<Stay> stays = stays(random, pieces, mean);
            means += stays.stream()
                    .filter(stay -> stay.exit() == Exit.SOLD)
                    .mapToInt(Stay::days)
                    .average()
                    .orElse(0);
            double median = SurvivalCurve.of(stays).median(Limits.LOG_LOG).day();
            medians[shop] = Double.isNaN(median) ? Double.POSITIVE_INFINITY : median;
        }
        Arrays.sort(medians);
        return new Days(median(mean), means / shops, medians[shops / 2]);
    }

    /** Of days rounded up: the first whole day by which half are sold. */
    private static double median(double mean) {
        return Math.ceil(mean * Math.log(2));
    }

    static Coverage coverage(int shops, int pieces, double mean) {
        Random random = new Random(SEED + pieces);
        int holds = 0;
        int open = 0;
        double truth = median(mean);
        for (int shop = 0; shop < shops; shop++) {
            Quantile median = SurvivalCurve.of(stays(random, pieces, mean)).median(Limits.LOG_LOG);
            boolean above = Double.isNaN(median.low()) || median.low() <= truth;
            boolean below = Double.isNaN(median.high()) || median.high() >= truth;
            holds += above && below ? 1 : 0;
            open += Double.isNaN(median.high()) ? 1 : 0;
        }
        return new Coverage((double) holds / shops, (double) open / shops);
    }

    /** The shares of shops in which any of five like groups is called faster, and in which any is called either. */
    static FalseWords falseWords(int shops, int pieces) {
        int faster = 0;
        int either = 0;
        for (int shop = 0; shop < shops; shop++) {
            Random random = new Random(SEED * 31 + shop * 101L + pieces);
            List<Round> rounds = new ArrayList<>();
            Map<Round, String> groups = new LinkedHashMap<>();
            for (int group = 0; group < 5; group++) {
                for (Stay stay : stays(random, pieces, 90)) {
                    UUID piece = new UUID(random.nextLong(), random.nextLong());
                    Round round = new Round(piece, piece, null, LocalDate.of(2025, 1, 1), stay, "");
                    rounds.add(round);
                    groups.put(round, "group " + group);
                }
            }
            List<Speed> rows =
                    SpeedTable.of(rounds, round -> List.of(groups.get(round))).rows();
            boolean fast = rows.stream().anyMatch(row -> row.verdict() == Speed.Verdict.FASTER);
            boolean slow = rows.stream().anyMatch(row -> row.verdict() == Speed.Verdict.SLOWER);
            faster += fast ? 1 : 0;
            either += fast || slow ? 1 : 0;
        }
        return new FalseWords((double) faster / shops, (double) either / shops);
    }

    /** One group as it truly is; amounts in minor units. */
    private record Truth(double chance, double net, double minutes, double money) {

        static Truth drawn(Random random) {
            return new Truth(
                    0.25 + 0.65 * random.nextDouble(),
                    2000 + 4000 * random.nextDouble(),
                    40 + 120 * random.nextDouble(),
                    500 + 1000 * random.nextDouble());
        }

        double perHour() {
            return (chance * net - money) * 60 / minutes;
        }
    }

    /** What a shop knows of a group, and the day its last piece sold. */
    private static final class Known {
        private final List<Long> nets = new ArrayList<>();
        private final List<Long> minutes = new ArrayList<>();
        private final List<Long> money = new ArrayList<>();
        private int lastSold = -1;

        Pool pool() {
            return new Pool(
                    money.size(),
                    new Tries(money.size(), nets.size()),
                    moments(nets),
                    new Moments(nets.size(), BigDecimal.ZERO, BigDecimal.ZERO),
                    new Moments(money.size(), BigDecimal.ZERO, BigDecimal.ZERO),
                    moments(minutes),
                    moments(money));
        }

        /** What a sold piece left less what one costs, by the hour, of its own sold pieces alone. */
        double rawPerHour() {
            return nets.isEmpty() ? Double.NEGATIVE_INFINITY : (mean(nets) - mean(money)) * 60 / mean(minutes);
        }

        private static double mean(List<Long> figures) {
            return figures.stream().mapToLong(Long::longValue).average().orElse(0);
        }

        private static Moments moments(List<Long> figures) {
            return Moments.of(figures.stream().mapToLong(Long::longValue).toArray());
        }
    }

    /** Eight groups, of each between half and one and a half times so many pieces; the advice is by the bench hour. */
    static Regret regret(int shops, int pieces) {
        double[] lost = new double[3];
        int none = 0;
        for (int shop = 0; shop < shops; shop++) {
            Random random = new Random(SEED * 17 + shop * 97L + pieces);
            Map<PayRow.Group, Truth> truths = new LinkedHashMap<>();
            Map<PayRow.Group, Known> known = new LinkedHashMap<>();
            for (int group = 0; group < 8; group++) {
                PayRow.Group name = new PayRow.Group(new UUID(1, group), "Kind " + group, new UUID(2, group), "Style");
                truths.put(name, Truth.drawn(random));
                known.put(name, history(truths.get(name), pieces / 2 + random.nextInt(pieces), random));
            }
            double best =
                    truths.values().stream().mapToDouble(Truth::perHour).max().orElseThrow();
            PayRow.Group last = most(known, group -> group.lastSold);
            PayRow.Group raw = most(known, Known::rawPerHour);
            Map<PayRow.Group, Pool> cells = new LinkedHashMap<>();
            known.forEach((name, group) -> cells.put(name, group.pool()));
            NextRow first = MakeNext.rows(cells, aims(), MakeNext.Order.HOUR).get(0);
            none += first.told() ? 0 : 1;
            PayRow.Group advised = first.told() ? first.group() : last;
            lost[0] += (best - truths.get(advised).perHour()) / best;
            lost[1] += (best - truths.get(last).perHour()) / best;
            lost[2] += (best - truths.get(raw).perHour()) / best;
        }
        return new Regret(lost[0] / shops, lost[1] / shops, lost[2] / shops, (double) none / shops);
    }

    private static PayRow.Group most(
            Map<PayRow.Group, Known> known, java.util.function.ToDoubleFunction<Known> figure) {
        return known.entrySet().stream()
                .max(java.util.Comparator.comparingDouble(entry -> figure.applyAsDouble(entry.getValue())))
                .orElseThrow()
                .getKey();
    }

    private static Known history(Truth truth, int pieces, Random random) {
        Known known = new Known();
        for (int i = 0; i < pieces; i++) {
            known.money.add(spread(truth.money(), random));
            known.minutes.add(spread(truth.minutes(), random));
            if (random.nextDouble() < truth.chance()) {
                known.nets.add(spread(truth.net(), random));
                known.lastSold = Math.max(known.lastSold, random.nextInt(LATELY));
            }
        }
        return known;
    }

    /** Around the truth by a third of it, never below nothing. */
    private static long spread(double truth, Random random) {
        return Math.max(0, Math.round(truth * (1 + random.nextGaussian() / 3)));
    }

    private static Aims aims() {
        return new Aims(
                LATELY,
                Amount.ZERO,
                Amount.ZERO,
                null,
                Percent.ZERO,
                PriceEndings.parse("", 2).orElseThrow());
    }
}
