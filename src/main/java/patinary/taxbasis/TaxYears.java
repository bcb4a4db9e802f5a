package patinary.taxbasis;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;

/** The days of a tax year, by the shop's tax table. A year bears the number of the calendar year in which it begins. */
@Component
public class TaxYears {

    private final YearStarts starts = YearStarts.load();
    private final CurrentShop shop;

    TaxYears(CurrentShop shop) {
        this.shop = shop;
    }

    public LocalDate first(int year) {
        return starts.first(shop.taxTable(), year);
    }

    public LocalDate last(int year) {
        return starts.last(shop.taxTable(), year);
    }

    /** The year that a day lies in. */
    public int of(LocalDate day) {
        return starts.year(shop.taxTable(), day);
    }

    /** The year in which the books begin. */
    public int firstOfBooks() {
        return of(shop.firstDay());
    }
}
