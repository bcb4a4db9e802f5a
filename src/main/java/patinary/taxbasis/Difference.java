package patinary.taxbasis;

import patinary.money.Amount;

/**
 * By how much all profit for tax up to the end of a day is above all profit by the books up to then, for one reason and one
 * subject, if a year is counted so that the reason holds.
 *
 * @param category of the account of profit and loss, empty where it has none
 */
record Difference(Reason reason, String category, Subject subject, Amount amount) {

    Amount under(TaxBasis basis) {
        return reason.holdsUnder(basis) ? amount : Amount.ZERO;
    }
}
