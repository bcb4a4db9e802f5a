package patinary.ledger;

/**
 * The few accounts of the shop's books. A positive amount is a debit: more of what she has, or a cost; a negative amount
 * is a credit: what she owes, or income. docs/handbook/accounts.md says what moves each one.
 */
public enum Account {
    /** Money by place: cash box, bank, personal card, a channel's balance. */
    MONEY,
    /** What buyers still owe, by sale. */
    RECEIVABLE,
    /** What she still owes, by receipt. */
    PAYABLE,
    /** What buyers paid ahead of a sale. */
    CUSTOMER_DEPOSITS,
    /** Credit she promised to buyers instead of money back. */
    STORE_CREDIT_GIVEN,
    /** Credit that a source owes her, by source. */
    STORE_CREDIT_HELD,
    /** Sales tax collected and not yet paid over. */
    SALES_TAX_DUE,
    /** Landed cost of pieces not yet sold, by piece. */
    PIECES,
    /** Cost of supplies on the bench, by supply. */
    BENCH,
    /** Cost of supplies on the retail shelf, by supply. */
    SHELF,
    /** Price of what was sold, after discounts, without tax. */
    SALES,
    /** Shipping that buyers paid, without tax. */
    SHIPPING_CHARGED,
    /** Money given back to buyers, without tax. */
    REFUNDS,
    /** Income that is no sale: lessons, videos. */
    OTHER_INCOME,
    /** Landed cost of the pieces that were sold, net of returns. */
    COST_OF_PIECES,
    /** Cost of the supplies that were sold. */
    COST_OF_RETAIL,
    /** Cost of what broke, spoiled, went missing or was returned at a loss. */
    WRITE_OFFS,
    /** Cost given to supplies that a count found beyond the books. */
    FOUND_AT_COUNT,
    /** Landed cost of pieces kept or given away. */
    OWN_USE,
    /** What channels and payment services keep. */
    FEES,
    /** Carriage and packing of what was sold. */
    POSTAGE,
    /** Other costs of the shop, by category. */
    EXPENSE,
    /** Business miles at the dated rate. */
    VEHICLE,
    /** Cash rounding at a till, and cash short or over when it was counted. */
    ROUNDING,
    /** What the owner put in: money, things of her own, her car. */
    OWNER_IN,
    /** What the owner took out: money, things for home, charity. */
    OWNER_OUT,
    /** The other side of everything that was there on the first day. */
    OPENING;

    /** Whether what pieces cost lies here, by piece: in stock, or where they left to. No document posts here for a piece by itself. */
    boolean bearsPieces() {
        return this == PIECES || this == COST_OF_PIECES || this == WRITE_OFFS || this == OWN_USE;
    }

    /** Whether the account holds things at cost: pieces, bench or shelf. */
    public boolean isStock() {
        return this == PIECES || this == BENCH || this == SHELF;
    }
}
