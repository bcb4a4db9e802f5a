package patinary.ledger;

/** What the books need to know of the shop. */
public interface BooksSettings {

    StockMethod stockMethod();
}
