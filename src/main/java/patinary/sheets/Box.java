package patinary.sheets;

import java.math.BigDecimal;

/** A rectangle on a sheet, in centimetres from its upper left corner. */
record Box(BigDecimal x, BigDecimal y, BigDecimal width, BigDecimal height) {

    /** Equal boxes are the same however many zeros follow the point. */
    Box {
        x = x.stripTrailingZeros();
        y = y.stripTrailingZeros();
        width = width.stripTrailingZeros();
        height = height.stripTrailingZeros();
    }

    BigDecimal area() {
        return width.multiply(height);
    }

    boolean holds(BigDecimal wide, BigDecimal high) {
        return wide.compareTo(width) <= 0 && high.compareTo(height) <= 0;
    }

    boolean isNothing() {
        return width.signum() <= 0 || height.signum() <= 0;
    }
}
