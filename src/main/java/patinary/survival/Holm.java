package patinary.survival;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Several comparisons at once: Holm, Scand. J. Statist. 6 (1979). */
public final class Holm {

    private Holm() {}

    /** The chances adjusted for how many comparisons were made, in the order given. */
    public static double[] adjust(double... chances) {
        List<Integer> ascending = IntStream.range(0, chances.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> chances[i]))
                .toList();
        double[] adjusted = new double[chances.length];
        double most = 0;
        for (int rank = 0; rank < chances.length; rank++) {
            int i = ascending.get(rank);
            most = Math.max(most, Math.min(1, (chances.length - rank) * chances[i]));
            adjusted[i] = most;
        }
        return adjusted;
    }
}
