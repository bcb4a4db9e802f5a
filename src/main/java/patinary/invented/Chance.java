package patinary.invented;

import java.util.Random;
import java.util.UUID;

/**
 * Chance that belongs to one thing of the shop: the same seed, kind of thing and number always draw the same, whatever
 * was drawn for others. So any row can be made up again at any time, and none has to be kept. {@link Random} is specified to
 * the bit, so every Java draws the same.
 */
final class Chance {

    private static final long VERSION_4 = 0x4000L;

    private final Random random;

    Chance(long seed, String what, long number) {
        random = new Random(mixed(mixed(seed + what.hashCode()) + number));
    }

    /** The id of a thing. */
    static UUID id(long seed, String what, long number) {
        Chance chance = new Chance(seed, what, number);
        long high = chance.random.nextLong() & ~0xF000L | VERSION_4;
        long low = chance.random.nextLong() & 0x3FFFFFFFFFFFFFFFL | 0x8000000000000000L;
        return new UUID(high, low);
    }

    /** A whole number, both bounds among the answers. */
    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    boolean happens(double share) {
        return random.nextDouble() < share;
    }

    double factor(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    /** One of so many, the first ones more often: the share of the first tenth is about a third. */
    int favoured(int many) {
        double drawn = random.nextDouble();
        return (int) (many * drawn * drawn);
    }

    /** A factor around 1 whose logarithm is normal with the given deviation. */
    double around(double deviation) {
        return Math.exp(deviation * random.nextGaussian());
    }

    /** Days of a wait without memory. */
    double waiting(double mean) {
        return -mean * Math.log(1 - random.nextDouble());
    }

    /** Spreads near seeds over all numbers (the finishing step of the 64-bit variant of MurmurHash3, in the public domain). */
    private static long mixed(long seed) {
        long mixed = seed + 0x9E3779B97F4A7C15L;
        mixed = (mixed ^ mixed >>> 33) * 0xff51afd7ed558ccdL;
        mixed = (mixed ^ mixed >>> 33) * 0xc4ceb9fe1a85ec53L;
        return mixed ^ mixed >>> 33;
    }
}
