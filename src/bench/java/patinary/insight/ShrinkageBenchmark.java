package patinary.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Figures of 144 groups of kind and style, invented, drawn towards those of all: learnt from all, and said of each with its interval. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ShrinkageBenchmark {

    private static final int GROUPS = 144;
    private static final int MOST = 200;

    private final List<Moments> sums = new ArrayList<>();
    private final List<Tries> tries = new ArrayList<>();

    @Setup
    public void invent() {
        Random random = new Random(1);
        for (int group = 0; group < GROUPS; group++) {
            int pieces = 1 + random.nextInt(MOST);
            double share = 0.2 + 0.6 * random.nextDouble();
            long level = 500 + random.nextInt(3_000);
            sums.add(Moments.of(random.longs(pieces, level, 2 * level).toArray()));
            tries.add(new Tries(
                    pieces, random.doubles(pieces).filter(one -> one < share).count()));
        }
    }

    @Benchmark
    public Object means() {
        ShrunkenMean learnt = ShrunkenMean.of(sums);
        return sums.stream().map(learnt::mean).toList();
    }

    @Benchmark
    public Object shares() {
        ShrunkenShare learnt = ShrunkenShare.of(tries);
        return tries.stream().map(learnt::share).toList();
    }
}
