package patinary.shop;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.ledger.BooksSettings;
import patinary.ledger.StockMethod;

/** Tells the books how this shop counts its supplies. */
@Component
class ShopBooks implements BooksSettings {

    private final JdbcClient jdbc;

    ShopBooks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * As it is stored now and not as {@link CurrentShop} read it when the request began: who derives may have waited for the turn
     * meanwhile, while another changed it and derived everything.
     */
    @Override
    public StockMethod stockMethod() {
        return StockMethod.valueOf(jdbc.sql("select costing_method from shop where id = ?")
                .param(Shop.ONLY)
                .query(String.class)
                .single());
    }
}
