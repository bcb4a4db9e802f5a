package patinary.supplies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;

/**
 * What a container of a supply tells on the scales.
 *
 * @param emptyGrams what the empty container weighs with its lid, in g; null where it is not known
 * @param gramsPerMl what one ml of the supply weighs, in g; null where it is not known
 */
public record Weighing(
        @Nullable BigDecimal emptyGrams, @Nullable BigDecimal gramsPerMl) {

    public static final Weighing UNKNOWN = new Weighing(null, null);

    private static final int SCALE = 14;

    /** Whether a supply of this dimension can be counted on the scales. */
    public boolean isEnough(Dimension dimension) {
        return emptyGrams != null
                && (dimension == Dimension.MASS || dimension == Dimension.VOLUME && gramsPerMl != null);
    }

    /**
     * What is in a container that weighs so much in all, in the supply's base unit, rounded half up at 14 decimals.
     *
     * @return nothing where too little is known, or where it weighs less than the empty container
     */
    public Optional<BigDecimal> content(BigDecimal grossGrams, Dimension dimension) {
        if (emptyGrams == null || !isEnough(dimension) || grossGrams.compareTo(emptyGrams) < 0) {
            return Optional.empty();
        }
        BigDecimal net = grossGrams.subtract(emptyGrams);
        return Optional.of(
                dimension == Dimension.MASS || gramsPerMl == null
                        ? net
                        : net.divide(gramsPerMl, SCALE, RoundingMode.HALF_UP));
    }
}
