package patinary.survival;

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

/** The sums over days on offer, of invented stays in twelve groups: two of three sell, after 60 days in the mean. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class DaysBenchmark {

    private static final int GROUPS = 12;
    private static final int MEAN = 60;

    @Param("15000")
    public int stays;

    private final List<Stay> all = new ArrayList<>();
    private final List<List<Stay>> groups = new ArrayList<>();
    private double[] chances;

    @Setup
    public void invent() {
        Random random = new Random(1);
        for (int g = 0; g < GROUPS; g++) {
            groups.add(new ArrayList<>());
        }
        for (int i = 0; i < stays; i++) {
            int days = (int) (-MEAN * Math.log(1 - random.nextDouble()));
            int ends = random.nextInt(6);
            Stay stay = Stay.of(days, ends < 4 ? Exit.SOLD : ends < 5 ? Exit.WITHDRAWN : Exit.OPEN);
            all.add(stay);
            groups.get(i % GROUPS).add(stay);
        }
        chances = random.doubles((long) GROUPS * (GROUPS - 1) / 2).toArray();
    }

    @Benchmark
    public Object kaplanMeier() {
        return SurvivalCurve.of(all);
    }

    @Benchmark
    public Object aalenJohansen() {
        return Incidence.of(all);
    }

    /** All groups at once. */
    @Benchmark
    public Object logRank() {
        return LogRank.of(groups);
    }

    /** As many comparisons as there are pairs of groups. */
    @Benchmark
    public Object holm() {
        return Holm.adjust(chances);
    }
}
