package patinary.sheets;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import patinary.measure.Sides;

/**
 * Something that was cut out.
 *
 * @param area in square centimetres
 * @param sides where its shape is known, else null
 */
record CutOut(BigDecimal area, @Nullable Sides sides) {

    static CutOut of(Sides sides) {
        return new CutOut(sides.area(), sides);
    }

    static CutOut shapeless(BigDecimal area) {
        return new CutOut(area, null);
    }
}
