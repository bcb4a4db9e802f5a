package patinary.counting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/**
 * An invented shop in which the truth is known: each measure is really so many times its noted size (a steady bias, from half
 * to double), and each use is off by chance besides. The same seed always gives the same shop.
 */
final class InventedEye {

    static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    /** How a shop behaves. */
    record Habits(int measures, double chance, double usesASpan, double step) {}

    private final Random random;
    private final Habits habits;
    final double[] truth;
    final double[] sizes;
    private final double mixing;
    final List<Span> spans = new ArrayList<>();

    /** Of each single use: its measure, what was noted, what it really was. */
    final List<double[]> singles = new ArrayList<>();

    /** Every measure of it has a bias of its own, from half to double. */
    InventedEye(long seed, Habits habits) {
        this(seed, habits, 2);
    }

    /** @param most the largest bias; 1 for a shop whose measures are all right */
    InventedEye(long seed, Habits habits, double most) {
        this.random = new Random(seed);
        this.habits = habits;
        truth = random.doubles(habits.measures())
                .map(u -> Math.pow(most, 2 * u - 1))
                .toArray();
        sizes = random.doubles(habits.measures(), 1, 12).toArray();
        mixing = 1.0 / habits.measures();
    }

    InventedEye counted(int times) {
        for (int i = 0; i < times; i++) {
            span(i);
        }
        return this;
    }

    private void span(int nth) {
        List<Span.Use> uses = new ArrayList<>();
        double used = 0;
        for (int j = 0; j < sizes.length; j++) {
            long many = Math.round(habits.usesASpan() * mixing * 2 * random.nextDouble());
            for (int u = 0; u < many; u++) {
                double real = sizes[j] * truth[j] * byChance();
                uses.add(new Span.Use("measure " + j, 1, sizes[j]));
                singles.add(new double[] {j, sizes[j], real});
                used += real;
            }
        }
        double read = used + rounding() - rounding();
        LocalDate until = FIRST.plusDays(14L * (nth + 1));
        spans.add(new Span(
                new UUID(0, nth),
                nth == 0 ? null : until.minusDays(14),
                until,
                uses,
                uses.stream().mapToDouble(Span.Use::noted).sum(),
                Math.max(0, read),
                habits.step(),
                false));
    }

    /** Log-normal with mean 1 and the shop's spread. */
    private double byChance() {
        double variance = Math.log(1 + habits.chance() * habits.chance());
        return Math.exp(random.nextGaussian() * Math.sqrt(variance) - variance / 2);
    }

    private double rounding() {
        return habits.step() * (random.nextDouble() - 0.5);
    }
}
