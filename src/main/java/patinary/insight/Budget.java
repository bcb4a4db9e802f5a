package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.Aims;

/**
 * The most she may pay at the shelf, term by term, each rounded as it is shown, so that it can be checked by hand:
 * docs/handbook/what-to-pay.md. Nothing of it is a tax figure.
 *
 * @param chance that a piece sells within her horizon, in percent with two decimals, half up
 * @param net what a sold piece leaves of its sale, before its cost
 * @param ifSold the chance times that, half up
 * @param ifNot the chance that it does not sell times what it brings then, half up
 * @param supplies usually used on such a piece
 * @param minutes usually spent on such a piece
 * @param work those minutes at her rate, half up
 * @param target the profit that is to be left
 * @param spend what may be spent on it, tax and premium included; below zero where it is not worth buying
 * @param most the price at the shelf, rounded down; below zero where it is not worth buying
 */
record Budget(
        Percent chance,
        Amount net,
        Amount ifSold,
        Amount ifNot,
        Amount supplies,
        long minutes,
        Amount work,
        Amount target,
        Amount spend,
        Amount most) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    /**
     * What the sum starts from.
     *
     * @param chance in percent
     * @param minutes whole minutes
     */
    record Usual(Percent chance, Amount net, Amount supplies, long minutes) {}

    static Budget of(Usual usual, Amount hourlyRate, Aims aims) {
        BigDecimal p = usual.chance().value();
        Amount ifSold = usual.net().part(p, HUNDRED, RoundingMode.HALF_UP);
        Amount ifNot = aims.salvage().part(HUNDRED.subtract(p), HUNDRED, RoundingMode.HALF_UP);
        Amount work = hourlyRate.part(BigDecimal.valueOf(usual.minutes()), HOUR, RoundingMode.HALF_UP);
        Amount before = ifSold.plus(ifNot).minus(usual.supplies()).minus(work);
        Amount target = target(before, usual.supplies(), aims);
        Amount spend = before.minus(target);
        return new Budget(
                usual.chance(),
                usual.net(),
                ifSold,
                ifNot,
                usual.supplies(),
                usual.minutes(),
                work,
                target,
                spend,
                price(spend, aims));
    }

    /** The price at the shelf to which tax and premium are added to make what is spent; rounded down. */
    static Amount price(Amount spend, Aims aims) {
        return spend.part(HUNDRED, HUNDRED.add(aims.purchaseTax().value()), RoundingMode.FLOOR);
    }

    /**
     * An amount as she set it; or a share r of all the money in the piece, that is of x + supplies where x is what is
     * spent: x = before − r (x + supplies), so the profit is r (before + supplies) ÷ (1 + r), rounded up.
     */
    private static Amount target(Amount before, Amount supplies, Aims aims) {
        Percent wished = aims.targetReturn();
        return wished == null
                ? aims.target()
                : before.plus(supplies)
                        .part(wished.value(), HUNDRED.add(wished.value()), RoundingMode.CEILING)
                        .max(Amount.ZERO);
    }
}
