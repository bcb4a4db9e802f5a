package patinary.counting;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import patinary.counting.TrueSizes.Ratio;

/**
 * How far her eye is off for one supply.
 *
 * @param spans from count to count, the oldest first
 * @param telling how many of them tell something
 * @param plain what was used over what was noted, over all telling spans; null where there are none
 * @param supply the same drawn towards 1, with its interval
 * @param measures each of her measures that was used
 * @param chance by how much of its size one use varies; no count can take this away
 */
record Eye(
        List<Span> spans,
        int telling,
        @Nullable Double plain,
        @Nullable Ratio supply,
        List<Judged> measures,
        @Nullable Ratio chance) {

    /** Fewer counts than this say nothing that is worth acting on. */
    static final int FEWEST = 3;

    /** An interval this many times as wide as itself is too wide to act on. */
    private static final double WIDEST = 3;

    /** What is to be said of a measure. */
    enum Verdict {
        TOO_FEW,
        TOO_WIDE,
        AGREES,
        IS_OFF
    }

    /**
     * One measure.
     *
     * @param name empty for what was told in units or parts of a pack
     * @param spans in how many telling spans it was used
     */
    record Judged(String name, int spans, Ratio ratio) {

        Verdict verdict() {
            if (spans < FEWEST) {
                return Verdict.TOO_FEW;
            }
            if (ratio.low() <= 0 || ratio.high() / ratio.low() > WIDEST) {
                return Verdict.TOO_WIDE;
            }
            return ratio.leavesOutOne() ? Verdict.IS_OFF : Verdict.AGREES;
        }
    }

    static Eye of(List<Span> spans) {
        List<Span> telling = spans.stream().filter(Span::tells).toList();
        if (telling.isEmpty()) {
            return new Eye(spans, 0, null, null, List.of(), null);
        }
        List<String> names = telling.stream()
                .flatMap(span -> span.uses().stream())
                .map(Span.Use::measure)
                .distinct()
                .sorted()
                .toList();
        TrueSizes.Told apart = TrueSizes.of(
                telling,
                telling.stream()
                        .map(span -> names.stream().mapToDouble(span::noted).toArray())
                        .toArray(double[][]::new));
        List<Judged> judged = new ArrayList<>();
        for (int j = 0; j < names.size(); j++) {
            String name = names.get(j);
            int used =
                    (int) telling.stream().filter(span -> span.noted(name) > 0).count();
            judged.add(new Judged(name, used, apart.ratios().get(j)));
        }
        return new Eye(spans, telling.size(), plain(telling), together(telling), List.copyOf(judged), apart.chance());
    }

    private static double plain(List<Span> telling) {
        return telling.stream().mapToDouble(Span::used).sum()
                / telling.stream().mapToDouble(Span::noted).sum();
    }

    private static Ratio together(List<Span> telling) {
        double[][] noted =
                telling.stream().map(span -> new double[] {span.noted()}).toArray(double[][]::new);
        return TrueSizes.of(telling, noted).ratios().get(0);
    }
}
