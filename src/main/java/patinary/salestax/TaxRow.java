package patinary.salestax;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * One document that bears on sales tax, in minor units; what is given back is below zero.
 *
 * @param kind the kind of the document: SALE, REFUND, SALES_TAX_PAID, OPENING
 * @param saleId the sale, of a sale or its refund
 * @param taxPlaceId where it is taxed, or what place a payment settles
 * @param dueMinor by how much what is owed rises with it
 * @param passedMinor tax that the channel pays over itself; in no account of hers
 * @param passed whether the sale is one of which the channel pays the tax
 * @param taxed whether tax was charged on the sale
 * @param shippingTaxed whether its place taxed shipping on its day
 */
record TaxRow(
        UUID documentId,
        LocalDate docDate,
        String kind,
        @Nullable UUID saleId,
        @Nullable UUID taxPlaceId,
        String buyer,
        long priceMinor,
        long shippingMinor,
        long dueMinor,
        long passedMinor,
        boolean passed,
        boolean taxed,
        boolean shippingTaxed) {

    /** Stands for what has no place. */
    static final UUID NO_PLACE = new UUID(0, 0);

    public UUID place() {
        return taxPlaceId == null ? NO_PLACE : taxPlaceId;
    }

    public boolean isSale() {
        return kind.equals("SALE");
    }

    public boolean isRefund() {
        return kind.equals("REFUND");
    }

    public Amount net() {
        return Amount.of(priceMinor + shippingMinor);
    }

    public Amount due() {
        return Amount.of(dueMinor);
    }

    /** What of it tax was charged on. */
    public Amount taxedPart() {
        if (passed || !taxed) {
            return Amount.ZERO;
        }
        return shippingTaxed ? net() : Amount.of(priceMinor);
    }

    /** What of it the channel answers for. */
    public Amount passedPart() {
        return passed ? net() : Amount.ZERO;
    }

    public Amount untaxedPart() {
        return net().minus(taxedPart()).minus(passedPart());
    }
}
