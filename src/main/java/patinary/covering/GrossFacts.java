package patinary.covering;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.money.Amount;

/**
 * What the books have of a balance in a time, in minor units.
 *
 * @param salesMinor price after discounts of the sales of its channels
 * @param shippingMinor shipping charged with them
 * @param taxMinor sales tax charged with them that the shop owes
 * @param passedMinor sales tax that the channel pays over itself
 * @param refundMinor given back of such sales, without tax
 * @param feeMinor kept of such sales and of payouts, less what was returned
 * @param paidHereMinor what buyers paid into the balance with these sales
 * @param othersMinor what buyers paid into it with sales of other channels
 * @param laterMinor what buyers paid into it for sales that were owed, or ahead of one
 * @param incomeMinor income that is no sale and was paid into it, before what was kept
 * @param otherSide what the report counts on the other side of a turn of the time
 */
record GrossFacts(
        long salesMinor,
        long shippingMinor,
        long taxMinor,
        long passedMinor,
        long refundMinor,
        long feeMinor,
        long paidHereMinor,
        long othersMinor,
        long laterMinor,
        long incomeMinor,
        List<Paid> otherSide) {

    /** One thing that a buyer paid into the balance. */
    record Paid(UUID documentId, LocalDate docDate, String kind, String buyer, long amountMinor) {}

    /** What the buyers of these sales owed altogether. */
    Amount due() {
        return Amount.of(salesMinor + shippingMinor + taxMinor);
    }
}
