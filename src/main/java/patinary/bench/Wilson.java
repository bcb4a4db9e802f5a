package patinary.bench;

import patinary.survival.Normal;

/**
 * The Wilson score interval of a share, 95 in 100 (Newcombe, Statistics in Medicine 17 (1998), method 3). It stays between
 * nothing and all, and says something even where none or all failed. Shares from 0 to 1, not rounded.
 *
 * @param low the lower end
 * @param high the upper end
 */
public record Wilson(double low, double high) {

    /**
     * @param of how many there were; at least one
     * @throws IllegalArgumentException where there were none, or more failed than there were
     */
    static Wilson of(long failed, long of) {
        if (of < 1 || failed < 0 || failed > of) {
            throw new IllegalArgumentException("No share of " + failed + " in " + of);
        }
        double square = Normal.Z * Normal.Z;
        double centre = (failed + square / 2) / (of + square);
        double half = Normal.Z / (of + square) * Math.sqrt((double) failed * (of - failed) / of + square / 4);
        return new Wilson(failed == 0 ? 0 : centre - half, failed == of ? 1 : centre + half);
    }

    /** Whole percent. */
    public long lowPercent() {
        return Math.round(low * 100);
    }

    /** Whole percent. */
    public long highPercent() {
        return Math.round(high * 100);
    }
}
