package patinary.taxyear;

import patinary.ledger.Account;
import patinary.money.Amount;

/**
 * What one category of one account comes to in a year.
 *
 * @param category empty where the account has none
 * @param amountMinor debit positive, credit negative
 */
record AccountSum(String account, String category, long amountMinor) {

    /** The amount as a page shows it: income and costs are both positive; refunds are what was given back. */
    public Amount shown() {
        boolean income = switch (Account.valueOf(account)) {
            case SALES, SHIPPING_CHARGED, OTHER_INCOME -> true;
            default -> false;
        };
        return income ? Amount.of(amountMinor).negated() : Amount.of(amountMinor);
    }

    String key() {
        return TaxTable.key(account, category);
    }
}
