package patinary.selling;

/** What the percentage of a fee is taken of. */
public enum FeeBase {
    PRICE,
    PRICE_AND_SHIPPING,
    ALL_WITH_TAX
}
