package patinary.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** An amount in cents, shared by weights without losing one. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SharesBenchmark {

    private static final Amount TOTAL = Amount.of(123_457);
    private static final int MOST = 10_000;

    @Param({"2", "7", "100"})
    public int parts;

    private final List<BigDecimal> weights = new ArrayList<>();

    @Setup
    public void invent() {
        Random random = new Random(1);
        for (int i = 0; i < parts; i++) {
            weights.add(BigDecimal.valueOf(1 + random.nextInt(MOST), 2));
        }
    }

    @Benchmark
    public Object split() {
        return Shares.split(TOTAL, weights);
    }
}
