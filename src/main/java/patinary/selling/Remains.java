package patinary.selling;

import patinary.money.Amount;

/**
 * What remains of a price.
 *
 * @param charged what the buyer is charged
 * @param fee what the channel keeps
 * @param payment what the payment service keeps
 * @param outlay carriage, packing and all else that she pays for the sale
 */
public record Remains(Charged charged, Amount fee, Amount payment, Amount outlay) {

    /** Price and shipping less fees and outlay: without tax, and before what the piece itself cost. */
    public Amount net() {
        return charged.price()
                .plus(charged.shipping())
                .minus(fee)
                .minus(payment)
                .minus(outlay);
    }
}
