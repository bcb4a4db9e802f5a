package patinary.setaside;

import java.math.BigDecimal;
import java.math.RoundingMode;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.WholeUnits;

/**
 * Self-employment tax of a year (IRS Tax Topic 554). Each part is rounded half up to whole units and the rounded parts are added,
 * in the order of the form. The extra Medicare tax on high earnings is not in it: it goes by how somebody files.
 *
 * @param netShare the part of the net profit that counts
 * @param socialSecurity on what counts, up to the wage base
 * @param medicare on all that counts
 * @param floor nothing is due where less than this counts
 * @param wageBase the most that social security is taken of
 * @param digits how many digits of the currency are minor units
 */
record Contributions(
        Percent netShare, Percent socialSecurity, Percent medicare, Amount floor, Amount wageBase, int digits) {

    private static final BigDecimal HALF = new BigDecimal("0.5");

    /**
     * What is due on a year's profit.
     *
     * @param counted the part of the profit that counts, with its minor units
     * @param half half of the tax, rounded half up to whole units
     */
    record Due(Amount counted, Amount socialSecurity, Amount medicare, Amount tax, Amount half) {}

    Due on(Amount profit) {
        Amount counted = share(netShare, profit.max(Amount.ZERO));
        if (counted.compareTo(floor) < 0) {
            return new Due(counted, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO);
        }
        Amount social = whole(share(socialSecurity, counted.min(wageBase)));
        Amount care = whole(share(medicare, counted));
        Amount tax = social.plus(care);
        return new Due(counted, social, care, tax, whole(tax.times(HALF, RoundingMode.HALF_UP)));
    }

    private static Amount share(Percent percent, Amount of) {
        return of.times(percent.value().movePointLeft(2), RoundingMode.HALF_UP);
    }

    private Amount whole(Amount amount) {
        return WholeUnits.round(amount, digits);
    }
}
