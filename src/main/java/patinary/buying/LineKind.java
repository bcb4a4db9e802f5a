package patinary.buying;

/** What a receipt line was bought for. */
public enum LineKind {
    /** Things to be sold. */
    PIECES,
    /** A supply for the bench. */
    SUPPLY,
    /** A supply for the retail shelf. */
    SHELF,
    /** A cost of the shop, by category. */
    EXPENSE,
    /** For herself: leaves through "owner out". */
    HOME,
    /** A donation at the till: takes no share of tax or shipping and leaves through "owner out". */
    CHARITY;

    public boolean isSupply() {
        return this == SUPPLY || this == SHELF;
    }
}
