package patinary.taxbasis;

import java.util.List;
import patinary.ledger.Account;
import patinary.money.Amount;

/**
 * What one subject does to a year's profit for tax beside its profit by the books. Differences are tax less books.
 *
 * @param category of the account of profit and loss, empty where it has none
 * @param before the difference at the end of the year before, as that year was counted
 * @param turned the same day's difference as this year is counted
 * @param after the difference at the end of this year, as it is counted
 */
public record Adjustment(Reason reason, String category, Subject subject, Amount before, Amount turned, Amount after) {

    /** One of the two sides of an adjustment; debit positive, credit negative. */
    public record Side(Account account, String category, Amount amount) {}

    /** What the change of the way of counting brings: nothing where it did not change. */
    public Amount opening() {
        return turned.minus(before);
    }

    /** What happened within the year. */
    public Amount within() {
        return after.minus(turned);
    }

    /** What is added to the profit by the books. */
    public Amount profit() {
        return after.minus(before);
    }

    /** The row on a line of the form and its counter row on the account that differs; they add to zero. */
    public List<Side> sides() {
        return List.of(
                new Side(reason.result(), category, profit().negated()), new Side(reason.balance(), "", profit()));
    }

    boolean isAnything() {
        return !before.isZero() || !turned.isZero() || !after.isZero();
    }
}
