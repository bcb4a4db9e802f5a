package patinary.shop;

import org.springframework.stereotype.Component;
import patinary.ledger.BooksSettings;
import patinary.ledger.StockMethod;

/** Tells the books how this shop counts its supplies. */
@Component
class ShopBooks implements BooksSettings {

    private final CurrentShop shop;

    ShopBooks(CurrentShop shop) {
        this.shop = shop;
    }

    @Override
    public StockMethod stockMethod() {
        return shop.costingMethod();
    }
}
