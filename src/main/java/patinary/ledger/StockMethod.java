package patinary.ledger;

/** How supplies leave stock at cost; one per shop. IAS 2 paragraph 25 names both (from memory, unconfirmed). */
public enum StockMethod {
    /** First in, first out: the oldest lot is used first. */
    FIFO,
    /** Moving average: one pool, re-averaged by each purchase. */
    AVERAGE
}
