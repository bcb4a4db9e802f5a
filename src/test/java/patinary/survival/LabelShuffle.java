package patinary.survival;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;

/**
 * The log-rank test for two small groups, by shuffling who belongs to which: how often a division of the same stays differs at
 * least so much. All divisions where they are few, else ten thousand drawn ones. Right where both groups were on offer over
 * the same time (Heinze, Gnant and Schemper, Biometrics 59, 2003).
 */
final class LabelShuffle {

    private static final int MOST = 20_000;
    private static final int DRAWN = 10_000;
    private static final double ALIKE = 1e-9;

    private final List<Stay> all;
    private final int first;
    private final double seen;

    private LabelShuffle(List<Stay> one, List<Stay> other) {
        this.all = new ArrayList<>(one);
        all.addAll(other);
        this.first = one.size();
        this.seen = LogRank.of(List.of(one, other)).statistic();
    }

    /** The chance of so large a difference between two groups that are alike. */
    static double chance(List<Stay> one, List<Stay> other, long seed) {
        LabelShuffle shuffle = new LabelShuffle(one, other);
        return divisions(shuffle.all.size(), shuffle.first) <= MOST ? shuffle.ofAll() : shuffle.ofDrawn(seed);
    }

    private static double divisions(int all, int some) {
        double ways = 1;
        for (int i = 1; i <= Math.min(some, all - some); i++) {
            ways = ways * (all - i + 1) / i;
        }
        return ways;
    }

    private double ofAll() {
        int[] count = new int[2];
        choose(new BitSet(), 0, 0, count);
        return (double) count[1] / count[0];
    }

    private void choose(BitSet chosen, int next, int size, int[] count) {
        if (size == first) {
            count[0]++;
            count[1] += differsAsMuch(chosen) ? 1 : 0;
            return;
        }
        for (int i = next; i <= all.size() - (first - size); i++) {
            chosen.set(i);
            choose(chosen, i + 1, size + 1, count);
            chosen.clear(i);
        }
    }

    private double ofDrawn(long seed) {
        Random random = new Random(seed);
        int asMuch = 0;
        for (int draw = 0; draw < DRAWN; draw++) {
            BitSet chosen = new BitSet();
            while (chosen.cardinality() < first) {
                chosen.set(random.nextInt(all.size()));
            }
            asMuch += differsAsMuch(chosen) ? 1 : 0;
        }
        return (asMuch + 1.0) / (DRAWN + 1);
    }

    private boolean differsAsMuch(BitSet chosen) {
        List<Stay> one = new ArrayList<>();
        List<Stay> other = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            (chosen.get(i) ? one : other).add(all.get(i));
        }
        return LogRank.of(List.of(one, other)).statistic() >= seen - ALIKE;
    }
}
