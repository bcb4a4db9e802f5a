package patinary.ledger;

/** The two places of a supply: the bench, where it is used, and the retail shelf, where it is for sale. */
public enum StockPlace {
    BENCH(Account.BENCH),
    SHELF(Account.SHELF);

    private final Account account;

    StockPlace(Account account) {
        this.account = account;
    }

    public Account account() {
        return account;
    }
}
