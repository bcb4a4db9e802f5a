package patinary.opening;

import java.math.BigDecimal;
import java.math.RoundingMode;
import patinary.measure.Dimension;

/** A stored quantity as it can be typed again, in its base unit. */
final class QuantityTyped {

    /** As many decimals as a typed number may have. */
    private static final int SCALE = 9;

    private QuantityTyped() {}

    static String of(BigDecimal base, Dimension dimension) {
        BigDecimal rounded = base.setScale(SCALE, RoundingMode.HALF_UP);
        String number =
                rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        return number
                + switch (dimension) {
                    case VOLUME -> " ml";
                    case MASS -> " g";
                    case LENGTH -> " cm";
                    case AREA -> " sq cm";
                    case COUNT -> "";
                };
    }
}
