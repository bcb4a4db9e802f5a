package patinary.taxyear;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import patinary.ledger.Account;
import patinary.money.Amount;
import patinary.taxbasis.Adjustment;
import patinary.taxbasis.Adjustments;

/**
 * What one category of one account comes to in a year.
 *
 * @param category empty where the account has none
 * @param amountMinor debit positive, credit negative
 */
public record AccountSum(String account, String category, long amountMinor) {

    /** The amount as a page shows it: income and costs are both positive; refunds are what was given back. */
    public Amount shown() {
        boolean income = switch (Account.valueOf(account)) {
            case SALES, SHIPPING_CHARGED, OTHER_INCOME -> true;
            default -> false;
        };
        return income ? Amount.of(amountMinor).negated() : Amount.of(amountMinor);
    }

    /** The sums with what tax counts otherwise, each on its own account and category. */
    static List<AccountSum> withAdjustments(List<AccountSum> sums, Adjustments adjustments) {
        Map<String, AccountSum> all = new LinkedHashMap<>();
        sums.forEach(sum -> all.put(sum.key(), sum));
        for (Adjustment row : adjustments.rows()) {
            AccountSum more = new AccountSum(
                    row.reason().result().name(),
                    row.category(),
                    row.profit().negated().minor());
            all.merge(more.key(), more, AccountSum::plus);
        }
        return List.copyOf(all.values());
    }

    /** Both together, which are of the same account and category. */
    AccountSum plus(AccountSum other) {
        return new AccountSum(account, category, Math.addExact(amountMinor, other.amountMinor));
    }

    String key() {
        return TaxTable.key(account, category);
    }
}
