package patinary.insight;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Days of an estimate as they are shown: whole or half, or null where they are not known. */
final class Days {

    private Days() {}

    static @Nullable BigDecimal orNull(double days) {
        return Double.isNaN(days) ? null : BigDecimal.valueOf(days).stripTrailingZeros();
    }
}
