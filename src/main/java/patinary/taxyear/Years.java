package patinary.taxyear;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.shop.CurrentShop;

/** Sorts a year onto the shop's tax table. */
@Service
@Transactional(readOnly = true)
class Years {

    private final TaxTables tables = TaxTables.load();
    private final YearBooks books;
    private final CurrentShop shop;

    Years(YearBooks books, CurrentShop shop) {
        this.books = books;
        this.shop = shop;
    }

    YearPage page(int year) {
        TaxTable table = table(year);
        CostOfGoods goods = books.goods(year);
        return YearPage.of(table, shop.taxTable(), YearSums.of(table, books.sums(year), goods), goods);
    }

    /** The shop's table, or the plain one in years for which its form is not known. */
    TaxTable table(int year) {
        TaxTable own = tables.table(shop.taxTable(), year);
        return own.lines().isEmpty() ? tables.table(TaxTables.PLAIN, year) : own;
    }

    /** The documents behind a line; empty where the line has none of its own. */
    List<YearBooks.Row> rows(int year, String meaning) {
        if (meaning.equals("cogs_purchases") || meaning.equals("cogs_materials")) {
            return books.purchases(year, meaning.equals("cogs_materials"));
        }
        String mapped = meaning.equals("other_expenses_total") ? "other_expenses" : meaning;
        TaxTable table = table(year);
        return books.rowsOf(
                year,
                books.sums(year).stream()
                        .filter(sum -> table.meaning(sum.account(), sum.category())
                                .filter(mapped::equals)
                                .isPresent())
                        .map(AccountSum::key)
                        .toList());
    }

    /** The documents behind what is on no line. */
    List<YearBooks.Row> unmappedRows(int year) {
        return books.rowsOf(
                year, page(year).unmapped().stream().map(AccountSum::key).toList());
    }

    Optional<TaxLine> line(int year, String meaning) {
        return table(year).line(meaning);
    }
}
