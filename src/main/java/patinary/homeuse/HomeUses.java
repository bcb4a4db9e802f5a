package patinary.homeuse;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.shop.CurrentShop;

/** Keeps what she says of the business use of her home. */
@Service
@Transactional
public class HomeUses {

    private static final Map<String, String> OFFICES = Map.of("us-schedule-c", "US");

    /** What she said of a year. */
    public record Said(int taxYear, BigDecimal squareFeet, int months, String note, long version) {}

    private final HomeRates rates = HomeRates.load();
    private final JdbcClient jdbc;
    private final CurrentShop shop;
    private final Books books;

    HomeUses(JdbcClient jdbc, CurrentShop shop, Books books) {
        this.jdbc = jdbc;
        this.shop = shop;
        this.books = books;
    }

    /** The rate of a year for the shop's tax table, or empty where it has none. */
    public Optional<HomeRate> rate(int year) {
        return rates.of(OFFICES.getOrDefault(shop.taxTable(), ""), year);
    }

    @Transactional(readOnly = true)
    public Optional<Said> said(int year) {
        return jdbc.sql("select tax_year, square_feet, months, note, version from home_use where tax_year = ?")
                .param(year)
                .query(Said.class)
                .optional();
    }

    /** The use in a year; empty where she said nothing or no rate is known. */
    @Transactional(readOnly = true)
    public Optional<HomeUse> of(int year) {
        return said(year)
                .flatMap(said ->
                        rate(year).map(rate -> new HomeUse(year, said.squareFeet(), said.months(), said.note(), rate)));
    }

    /**
     * Keeps what was said; its version is -1 where the form was drawn before there was anything.
     *
     * @throws OptimisticLockingFailureException where it changed after the form was drawn
     */
    public void keep(Said said) {
        books.settingsChange();
        if (said(said.taxYear()).map(Said::version).orElse(-1L) != said.version()) {
            throw new OptimisticLockingFailureException("The home use of " + said.taxYear() + " changed in between");
        }
        remove(said.taxYear());
        jdbc.sql("insert into home_use (tax_year, square_feet, months, note, version) values (?, ?, ?, ?, ?)")
                .params(said.taxYear(), said.squareFeet(), said.months(), said.note(), said.version() + 1)
                .update();
    }

    public void remove(int year) {
        books.settingsChange();
        jdbc.sql("delete from home_use where tax_year = ?").param(year).update();
    }
}
