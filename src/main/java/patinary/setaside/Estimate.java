package patinary.setaside;

import java.math.RoundingMode;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.WholeUnits;

/**
 * What to have set aside by one payment, step by step: the profit of the year so far is made a year's (the annualised income of
 * IRS Form 2210, Schedule AI), self-employment tax and her own percentages are taken of it, and the payment's share of that is what
 * should be there, less what was paid. Every step is in whole units, rounded half up. An estimate: other income, deductions of her
 * own and credits are not in it.
 *
 * @param annualised the profit made a whole year's
 * @param due self-employment tax on it
 * @param taxable the annualised profit less half of that tax, what her percentages are taken of
 * @param yearTax all three together
 * @param wanted the part of it that should be there by this payment
 * @param paid what was noted as paid up to its last day
 */
record Estimate(
        Instalment instalment,
        Amount profit,
        Amount annualised,
        Contributions.Due due,
        Amount taxable,
        Amount incomeTax,
        Amount stateTax,
        Amount yearTax,
        Amount wanted,
        Amount paid) {

    /** Her own percentages of income tax. */
    record Percentages(Percent income, Percent state) {}

    static Estimate of(
            Instalment instalment, Amount profit, Contributions contributions, Percentages own, Amount paid) {
        int digits = contributions.digits();
        Amount annualised = WholeUnits.round(profit.times(instalment.factor(), RoundingMode.HALF_UP), digits);
        Contributions.Due due = contributions.on(annualised);
        Amount taxable = annualised.minus(due.half()).max(Amount.ZERO);
        Amount income = part(own.income(), taxable, digits);
        Amount state = part(own.state(), taxable, digits);
        Amount year = due.tax().plus(income).plus(state);
        return new Estimate(
                instalment,
                profit,
                annualised,
                due,
                taxable,
                income,
                state,
                year,
                part(instalment.share(), year, digits),
                paid);
    }

    /** What is still to be set aside; nothing where more was paid. */
    public Amount left() {
        return wanted.minus(paid).max(Amount.ZERO);
    }

    private static Amount part(Percent percent, Amount of, int digits) {
        return WholeUnits.round(of.times(percent.value().movePointLeft(2), RoundingMode.HALF_UP), digits);
    }
}
