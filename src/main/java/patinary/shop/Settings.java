package patinary.shop;

import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.ledger.StockMethod;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** Reads and changes the shop's settings. */
@Service
class Settings {

    private final Shops shops;
    private final CurrentShop current;
    private final Books books;
    private final JdbcClient jdbc;

    Settings(Shops shops, CurrentShop current, Books books, JdbcClient jdbc) {
        this.shops = shops;
        this.current = current;
        this.books = books;
        this.jdbc = jdbc;
    }

    /** Whether the years are sorted by this table, or still may be: a sealed year keeps its lines and its days. */
    @Transactional(readOnly = true)
    public boolean mayBeSortedBy(String taxTable) {
        return taxTable.equals(current.taxTable())
                || jdbc.sql("select count(*) from year_seal")
                                .query(Integer.class)
                                .single()
                        == 0;
    }

    @Transactional(readOnly = true)
    public SettingsForm read() {
        Shop shop = shops.findById(Shop.ONLY).orElseThrow();
        SettingsForm form = new SettingsForm();
        form.version = shop.version;
        form.shopName = shop.name;
        form.taxTable = shop.taxTable;
        form.costingMethod = shop.costingMethod.name();
        form.timeZone = shop.timeZone;
        form.language = shop.language;
        form.country = shop.country;
        form.hourlyRate = ShopCurrency.ofCode(shop.currency).plain(Amount.of(shop.hourlyRateMinor));
        return form;
    }

    /**
     * Changes the settings; another costing method derives all postings anew in the same step.
     *
     * @throws OptimisticLockingFailureException where the settings changed after the form was drawn
     * @throws patinary.ledger.Refused where the books cannot be kept by the new method
     */
    @Transactional
    public void change(SettingsForm form, Amount hourlyRate) {
        Shop shop = shops.findById(Shop.ONLY).orElseThrow();
        if (shop.version != form.version) {
            throw new OptimisticLockingFailureException("The settings changed in between");
        }
        books.settingsChange();
        shop.name = form.shopName;
        shop.taxTable = form.taxTable;
        shop.hourlyRateMinor = hourlyRate.minor();
        shop.timeZone = form.timeZone;
        shop.language = form.language;
        shop.country = form.country;
        StockMethod method = StockMethod.valueOf(form.costingMethod);
        if (shop.costingMethod != method) {
            shop.costingMethod = method;
            current.changed();
            books.rederive();
        }
    }
}
