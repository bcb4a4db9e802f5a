package patinary.taxyear;

import patinary.money.ShopCurrency;
import patinary.taxbasis.Adjustment;
import patinary.taxbasis.Adjustments;
import patinary.web.CsvFile;

/**
 * What a year counts otherwise for tax than the books have it, as a table: one row for each document, supply, piece or buyer,
 * with the line of the form it goes to and the account of its other side.
 */
final class TaxAdjustmentsFile {

    private TaxAdjustmentsFile() {}

    /** Amounts are tax less books: above zero raises the profit for tax. */
    static CsvFile of(ShopCurrency currency, TaxTable table, Adjustments adjustments) {
        CsvFile file = new CsvFile(
                currency,
                "reason",
                "date",
                "kind",
                "about",
                "title",
                "account",
                "category",
                "tax_line",
                "meaning",
                "other_side",
                "end_of_year_before",
                "end_of_year",
                "opening_adjustment",
                "change_within_year",
                "profit_for_tax");
        for (Adjustment row : adjustments.rows()) {
            String meaning =
                    table.meaning(row.reason().result().name(), row.category()).orElse("");
            file.row(
                    row.reason(),
                    row.subject().day(),
                    row.subject().kind(),
                    row.subject().key(),
                    row.subject().text(),
                    row.reason().result(),
                    row.category(),
                    table.line(meaning).map(TaxLine::line).orElse(""),
                    meaning,
                    row.reason().balance(),
                    row.before(),
                    row.after(),
                    row.opening(),
                    row.within(),
                    row.profit());
        }
        return file;
    }
}
