package patinary.homeuse;

import java.math.BigDecimal;
import java.math.RoundingMode;
import patinary.money.Amount;

/**
 * The business use of a home in one year, deducted in the simplified way of IRS Revenue Procedure 2013-13: so much for each
 * square foot, up to a most, and never more than the business earned; nothing is carried to another year. The average over the
 * months of use is from memory: the area adjustment worksheet of Publication 587. Not tax advice.
 *
 * @param months in how many months of the year it was used for at least half of the days
 */
public record HomeUse(int year, BigDecimal squareFeet, int months, String note, HomeRate rate) {

    private static final BigDecimal YEAR = BigDecimal.valueOf(12);

    /** What the area allows, before the limit by income; rounded half up to the minor unit, once. */
    public Amount byArea() {
        return Amount.of(rate.minorPerSquareFoot())
                .part(
                        squareFeet.min(rate.mostSquareFeet()).multiply(BigDecimal.valueOf(months)),
                        YEAR,
                        RoundingMode.HALF_UP);
    }

    /**
     * What may be deducted.
     *
     * @param tentativeProfit what the business earned before this deduction; below zero it allows nothing
     */
    public Amount deduction(Amount tentativeProfit) {
        return byArea().min(tentativeProfit.max(Amount.ZERO));
    }
}
