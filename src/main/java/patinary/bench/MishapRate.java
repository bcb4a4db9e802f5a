package patinary.bench;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How often a supply line failed on a surface.
 *
 * @param failed how many pieces had a mishap with it
 * @param tried how many pieces of that surface it was used on
 * @param known whether it is known how many went well
 */
record MishapRate(UUID lineId, String line, String surface, long failed, long tried, boolean known) {

    /** Fewer say nothing about the next one. */
    private static final int ENOUGH = 5;

    public boolean isTooFew() {
        return !known || tried < ENOUGH;
    }

    public @Nullable Wilson interval() {
        return known ? Wilson.of(failed, tried) : null;
    }
}
