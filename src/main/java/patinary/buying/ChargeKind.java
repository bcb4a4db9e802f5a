package patinary.buying;

/** What a receipt adds to its lines, or takes off them. */
public enum ChargeKind {
    DISCOUNT,
    TAX,
    SHIPPING,
    /** A buyer's premium at an auction. */
    PREMIUM,
    FEE,
    /** The till's rounding to the smallest coin: below zero where it was in her favour. */
    ROUNDING
}
