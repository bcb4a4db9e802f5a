package patinary.taxbasis;

import java.util.Locale;
import patinary.ledger.Account;

/**
 * Why tax and books differ at the end of a day. Each names the account whose balance differs, and the account of profit
 * and loss on whose line the difference goes.
 */
public enum Reason {
    /** Sold and not paid: by cash received, no income yet. */
    UNPAID_SALE(Account.RECEIVABLE, Account.SALES),
    /** Paid ahead of a sale: by cash received, income already. */
    PAID_AHEAD(Account.CUSTOMER_DEPOSITS, Account.SALES),
    /** Given back as credit and not as money: by cash received, still received. */
    CREDIT_GIVEN(Account.STORE_CREDIT_GIVEN, Account.SALES),
    /** An expense on a bill that is not paid: by cash, not yet deducted. */
    UNPAID_EXPENSE(Account.PAYABLE, Account.EXPENSE),
    /** Supplies on a bill that is not paid: bought, and by cash not yet deducted. */
    UNPAID_SUPPLIES(Account.PAYABLE, Account.COST_OF_PIECES),
    /** The share of a piece's owner that is not paid out: by cash, not yet deducted. */
    OWNERS_SHARE(Account.PAYABLE, Account.COST_OF_PIECES),
    /** Supplies on the bench: deducted when bought. */
    BENCH(Account.BENCH, Account.COST_OF_PIECES),
    /** Supplies in pieces not sold: deducted when bought. */
    IN_PIECES(Account.PIECES, Account.COST_OF_PIECES);

    private final Account balance;
    private final Account result;

    Reason(Account balance, Account result) {
        this.balance = balance;
        this.result = result;
    }

    /** Whether tax differs from the books for this reason where a year is counted so. */
    public boolean holdsUnder(TaxBasis basis) {
        return switch (this) {
            case UNPAID_SALE, PAID_AHEAD, CREDIT_GIVEN, UNPAID_EXPENSE, OWNERS_SHARE -> basis.cash();
            case UNPAID_SUPPLIES -> basis.cash() && basis.whenBought();
            case BENCH, IN_PIECES -> basis.whenBought();
        };
    }

    /** The account on which what differs lies in the books. */
    public Account balance() {
        return balance;
    }

    /** The account of profit and loss that tells the line of the form. */
    public Account result() {
        return result;
    }

    /** Whether it is a part of stock, which a form asks for at the beginning and the end of the year. */
    public boolean isStock() {
        return this == BENCH || this == IN_PIECES;
    }

    /** Its word in addresses and message keys. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
