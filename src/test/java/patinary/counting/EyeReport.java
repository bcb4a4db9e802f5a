package patinary.counting;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Tells how well counts find the bias of invented shops; run with {@code .ci/measure-eye}, its table is in docs/benchmarks.md. */
final class EyeReport {

    static final int SHOPS = 400;
    private static final long SEED = 20260401;

    private EyeReport() {}

    /**
     * What became of all measures of all shops.
     *
     * @param before mean of |noted - true| / true of a measure
     * @param after the same of the corrected measure
     * @param worst the after that 95 of 100 measures stay below
     * @param offered share of measures that the shop would offer to correct
     * @param offeredBefore the error of those as noted
     * @param offeredAfter the error of those when corrected
     * @param covered share of measures whose interval holds the truth
     * @param singleBefore mean error of one use, of its real quantity
     * @param singleAfter the same with the corrected measures
     * @param singleKnown the same if the truth of every measure were known: chance alone
     * @param chance the mean of the reported chance
     */
    record Outcome(
            double before,
            double after,
            double worst,
            double offered,
            double offeredBefore,
            double offeredAfter,
            double covered,
            double singleBefore,
            double singleAfter,
            double singleKnown,
            double chance) {}

    static Outcome of(InventedEye.Habits habits, int counts) {
        List<Shop> shops = IntStream.range(0, SHOPS)
                .mapToObj(i -> new Shop(new InventedEye(SEED + i, habits).counted(counts)))
                .toList();
        double[] after = shops.stream().flatMapToDouble(Shop::after).sorted().toArray();
        return new Outcome(
                mean(shops.stream().flatMapToDouble(Shop::before)),
                mean(Arrays.stream(after)),
                after[(int) Math.ceil(0.95 * after.length) - 1],
                mean(shops.stream().flatMapToDouble(Shop::offered)),
                orNone(shops.stream().flatMapToDouble(shop -> shop.offered(j -> 1))),
                orNone(shops.stream().flatMapToDouble(shop -> shop.offered(shop::found))),
                mean(shops.stream().flatMapToDouble(Shop::covered)),
                mean(shops.stream().flatMapToDouble(shop -> shop.single(j -> 1))),
                mean(shops.stream().flatMapToDouble(shop -> shop.single(shop::found))),
                mean(shops.stream().flatMapToDouble(shop -> shop.single(j -> shop.shop.truth[j]))),
                mean(shops.stream().flatMapToDouble(Shop::chance)));
    }

    public static void main(String[] none) {
        System.out.println(
                "| measures of a supply | how counted | counts | bias before | bias after | 95 of 100 below | "
                        + "offered to correct | of these before | after | interval holds it | one use before | after | by chance alone | chance reported |");
        System.out.println(
                "| ---: | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        for (int measures = 1; measures <= 3; measures++) {
            for (double step : new double[] {0, 60}) {
                for (int counts : new int[] {1, 3, 6, 12}) {
                    line(measures, step, counts);
                }
            }
        }
    }

    private static void line(int measures, double step, int counts) {
        Outcome o = of(new InventedEye.Habits(measures, 0.3, 20, step), counts);
        System.out.printf(
                "| %d | %s | %d | %.0f%% | %.1f%% | %.0f%% | %.0f%% | %s | %s | %.0f%% | %.0f%% | %.0f%% | %.0f%% | %.0f%% |%n",
                measures,
                step == 0 ? "weighed" : "quarters of 240 ml",
                counts,
                100 * o.before(),
                100 * o.after(),
                100 * o.worst(),
                100 * o.offered(),
                percent(o.offeredBefore()),
                percent(o.offeredAfter()),
                100 * o.covered(),
                100 * o.singleBefore(),
                100 * o.singleAfter(),
                100 * o.singleKnown(),
                100 * o.chance());
    }

    private static String percent(double share) {
        return share < 0 ? "–" : "%.1f%%".formatted(100 * share);
    }

    /** Minus one where there is nothing to average. */
    private static double orNone(DoubleStream values) {
        return values.average().orElse(-1);
    }

    private static double mean(DoubleStream values) {
        return values.average().orElseThrow();
    }

    /** A shop with what the counts made of it. */
    private static final class Shop {
        private final InventedEye shop;
        private final Eye eye;

        Shop(InventedEye shop) {
            this.shop = shop;
            this.eye = Eye.of(shop.spans);
        }

        double found(int measure) {
            return eye.measures().stream()
                    .filter(judged -> judged.name().equals("measure " + measure))
                    .mapToDouble(judged -> judged.ratio().ratio())
                    .findFirst()
                    .orElse(1);
        }

        DoubleStream before() {
            return Arrays.stream(shop.truth).map(truth -> Math.abs(1 - truth) / truth);
        }

        DoubleStream after() {
            return IntStream.range(0, shop.truth.length)
                    .mapToDouble(j -> Math.abs(found(j) - shop.truth[j]) / shop.truth[j]);
        }

        DoubleStream covered() {
            return eye.measures().stream().mapToDouble(judged -> {
                double truth = shop.truth[Integer.parseInt(judged.name().substring(8))];
                return judged.ratio().low() <= truth && truth <= judged.ratio().high() ? 1 : 0;
            });
        }

        DoubleStream offered() {
            return IntStream.range(0, shop.truth.length).mapToDouble(j -> isOffered(j) ? 1 : 0);
        }

        DoubleStream offered(IntToDoubleFunction ratio) {
            return IntStream.range(0, shop.truth.length)
                    .filter(this::isOffered)
                    .mapToDouble(j -> Math.abs(ratio.applyAsDouble(j) - shop.truth[j]) / shop.truth[j]);
        }

        private boolean isOffered(int measure) {
            return eye.measures().stream()
                    .filter(judged -> judged.name().equals("measure " + measure))
                    .anyMatch(judged -> judged.verdict() == Eye.Verdict.IS_OFF);
        }

        DoubleStream chance() {
            return eye.chance() == null
                    ? DoubleStream.empty()
                    : DoubleStream.of(eye.chance().ratio());
        }

        DoubleStream single(IntToDoubleFunction ratio) {
            return shop.singles.stream()
                    .mapToDouble(use -> Math.abs(use[1] * ratio.applyAsDouble((int) use[0]) - use[2]) / use[2]);
        }
    }
}
