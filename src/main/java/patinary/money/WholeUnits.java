package patinary.money;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Amounts without minor units, as a form may ask for them: under half a unit is dropped, half a unit and more is rounded up
 * (Instructions for Form 1040, "Rounding Off to Whole Dollars", read); an amount below zero by its magnitude.
 */
public final class WholeUnits {

    private WholeUnits() {}

    /**
     * The nearest amount of whole units.
     *
     * @param digits how many digits of the currency are minor units
     */
    public static Amount round(Amount amount, int digits) {
        return Amount.of(BigDecimal.valueOf(amount.minor(), digits)
                .setScale(0, RoundingMode.HALF_UP)
                .movePointRight(digits)
                .longValueExact());
    }
}
