package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What one more piece of a kind in a style may be expected to earn.
 *
 * @param pool what it rests on
 * @param chance to sell within her horizon
 * @param net what a sold one leaves of its sale, in minor units
 * @param profit expected, sold or not, before her time; in minor units
 * @param half half of its 95 % interval
 * @param minutes of bench work on one, usually
 * @param money usually in one: bought and supplies, in minor units
 * @param words what may be said
 */
record NextRow(
        PayRow.Group group,
        Pool pool,
        Percent chance,
        double net,
        double profit,
        double half,
        double minutes,
        double money,
        Words words) {

    private static final double HOUR = 60;

    /** What may be said of a group. */
    enum Words {
        /** Even the lower limit is a profit. */
        WORTH,
        /** A profit is more likely than a loss. */
        LIKELY,
        /** A loss is to be expected. */
        LOSS,
        /** Too few to tell: not ranked. */
        FEW
    }

    public boolean told() {
        return words != Words.FEW;
    }

    public Amount netEach() {
        return amount(net);
    }

    public Amount profitEach() {
        return amount(profit);
    }

    public Amount low() {
        return amount(profit - half);
    }

    public Amount high() {
        return amount(profit + half);
    }

    /** Expected profit of a bench hour; null where no minutes were noted. */
    public @Nullable Amount perHour() {
        return ofHour(profit);
    }

    public @Nullable Amount perHourLow() {
        return ofHour(profit - half);
    }

    public @Nullable Amount perHourHigh() {
        return ofHour(profit + half);
    }

    /** Expected profit on the money in it; null where it costs nothing. */
    public @Nullable Percent onMoney() {
        return ofMoney(profit);
    }

    public @Nullable Percent onMoneyLow() {
        return ofMoney(profit - half);
    }

    public @Nullable Percent onMoneyHigh() {
        return ofMoney(profit + half);
    }

    public long wholeMinutes() {
        return Math.round(minutes);
    }

    public Amount moneyEach() {
        return amount(money);
    }

    private @Nullable Amount ofHour(double earned) {
        return minutes < 1 ? null : amount(earned * HOUR / minutes);
    }

    private @Nullable Percent ofMoney(double earned) {
        return money < 1 ? null : Ratios.percent(earned / money);
    }

    private static Amount amount(double minor) {
        return Amount.of(
                BigDecimal.valueOf(minor).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }
}
