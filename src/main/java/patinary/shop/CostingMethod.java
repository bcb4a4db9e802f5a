package patinary.shop;

/** Which cost leaves a store of supplies first. One method for the whole shop. */
public enum CostingMethod {
    /** The oldest lot is used up first. */
    FIFO,
    /** Every use costs the average of what is there. */
    AVERAGE
}
