package patinary.supplies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What the page of a tool says of its wear. Uses are for reading, rounded to two decimals.
 *
 * @param thought how many uses one is thought to last now
 * @param left how many of it are on the bench
 * @param usesLeft how many uses that is
 * @param costAUse what the next uses cost each, rounded half up; null where nothing is left, so that they cost nothing
 * @param uses how many uses there were since it was last counted
 * @param last the latest that was used up, or null
 */
record ToolView(
        int thought,
        BigDecimal left,
        BigDecimal usesLeft,
        @Nullable Amount costAUse,
        BigDecimal uses,
        @Nullable Lasted last) {

    /** Finer than any part of a tool, so that what is left of a third by its last decimal is nothing. */
    private static final int WHOLE_SCALE = 9;

    /**
     * One that was used up.
     *
     * @param uses how many uses it lasted
     * @param thought how many had been thought
     */
    record Lasted(BigDecimal uses, int thought) {}

    static ToolView of(BigDecimal size, BigDecimal left, Amount cost, BigDecimal uses, @Nullable Lasted last) {
        Amount each = left.signum() <= 0 ? null : cost.part(size.min(left), left, RoundingMode.HALF_UP);
        return new ToolView(
                ToolUse.lasts(size),
                left.setScale(WHOLE_SCALE, RoundingMode.HALF_UP),
                ToolUse.uses(left.max(BigDecimal.ZERO), size),
                each,
                uses.stripTrailingZeros(),
                last);
    }

    /** Whether it lasts longer than was thought: used up in the books, and used since. */
    public boolean outlives() {
        return left.signum() <= 0 && uses.signum() > 0;
    }

    /** Whether a whole one may be left when this one is worn out, so that it has to be said. */
    public boolean hasSpare() {
        return left.compareTo(BigDecimal.ONE) > 0;
    }

    /** How many whole ones are likely left once the one in use is worn out. */
    public BigDecimal spare() {
        BigDecimal whole = uses.signum() > 0
                ? left.setScale(0, RoundingMode.FLOOR)
                : left.setScale(0, RoundingMode.CEILING).subtract(BigDecimal.ONE);
        return whole.max(BigDecimal.ZERO);
    }

    /** The number to reckon with from now on, where the last one lasted another than is thought; null where it agrees. */
    public @Nullable Integer better() {
        if (last == null || last.uses().signum() <= 0 || last.uses().intValue() == thought) {
            return null;
        }
        return Math.min(last.uses().intValue(), ToolUse.MOST);
    }
}
