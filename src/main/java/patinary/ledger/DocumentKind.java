package patinary.ledger;

/**
 * The kinds of documents, in the order in which documents of one day are taken. The order is part of the books: costing
 * and every tie depend on it, so a new kind goes to the end.
 */
public enum DocumentKind {
    OPENING,
    RECEIPT,
    SUPPLIER_RETURN,
    TAKING,
    BENCH_ENTRY,
    COUNT,
    SALE,
    REFUND,
    REGROUPING,
    OFFER,
    PAYMENT,
    PAYOUT,
    POSTAGE,
    EXPENSE,
    TRIP,
    OTHER_INCOME,
    SALES_TAX_PAID,
    OWNER_MONEY,
    MONEY_MOVE,
    LETTING_GO,
    BILL_PAID,
    YEAR_SEAL,
    TILL_COUNT,
    SUPPLY_GIFT
}
