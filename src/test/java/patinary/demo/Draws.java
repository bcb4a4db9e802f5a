package patinary.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/** Chance from a fixed seed. {@link Random} is specified to the bit, so every Java draws the same shop. */
final class Draws {

    private static final long VERSION_4 = 0x4000L;

    private final Random random;

    Draws(long seed) {
        random = new Random(seed);
    }

    UUID id() {
        long high = random.nextLong() & ~0xF000L | VERSION_4;
        long low = random.nextLong() & 0x3FFFFFFFFFFFFFFFL | 0x8000000000000000L;
        return new UUID(high, low);
    }

    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    double factor(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** An evening moment of a day: when she wrote it down. */
    String evening(LocalDate day) {
        return "%sT%02d:%02d:%02dZ".formatted(day, between(17, 22), between(0, 59), between(0, 59));
    }

    static String usd(long cents) {
        return BigDecimal.valueOf(cents, 2).toPlainString();
    }
}
