package patinary.finishes;

import java.math.BigDecimal;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import patinary.measure.Unit;

/** What an amount of a supply is for. */
enum Per {
    SQUARE_FOOT(Unit.SQUARE_FOOT.factor()),
    SQUARE_METRE(Unit.SQUARE_METRE.factor()),
    PIECE(null);

    private final @Nullable BigDecimal area;

    Per(@Nullable BigDecimal area) {
        this.area = area;
    }

    /** In square centimetres; null for a piece of any size. */
    @Nullable
    BigDecimal area() {
        return area;
    }

    /** @throws IllegalArgumentException where no answer of the form has this surface */
    static Per of(@Nullable BigDecimal area) {
        return Arrays.stream(values())
                .filter(per -> area == null ? per.area == null : per.area != null && per.area.compareTo(area) == 0)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("For " + area + " square centimetres"));
    }
}
