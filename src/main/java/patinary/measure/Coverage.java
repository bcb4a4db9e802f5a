package patinary.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much of a supply a surface takes: so much for each so large a part of it, or so much for each piece whatever its
 * size. Both are kept as they were typed, so that 7.886 ml for a square foot is not rounded into a rate.
 *
 * @param quantity in the supply's base unit, above zero
 * @param perArea the surface it is for, in square centimetres and above zero; null where it is for a piece
 */
public record Coverage(BigDecimal quantity, @Nullable BigDecimal perArea) {

    public Coverage {
        if (quantity.signum() <= 0 || perArea != null && perArea.signum() <= 0) {
            throw new IllegalArgumentException("A supply covers something: " + quantity + " for " + perArea);
        }
    }

    /** Whether a surface must be known to say how much. */
    public boolean goesByArea() {
        return perArea != null;
    }

    /**
     * What one piece takes, in the supply's base unit, rounded half up at 14 decimals.
     *
     * @param area of the piece in square centimetres, or null where it is not known
     * @return nothing where it goes by a surface that is not known
     */
    public Optional<BigDecimal> forPiece(@Nullable BigDecimal area) {
        if (perArea == null) {
            return Optional.of(quantity.setScale(Shape.SCALE, RoundingMode.HALF_UP));
        }
        return Optional.ofNullable(area)
                .map(known -> quantity.multiply(known).divide(perArea, Shape.SCALE, RoundingMode.HALF_UP));
    }
}
