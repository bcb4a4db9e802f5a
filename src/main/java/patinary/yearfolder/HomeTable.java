package patinary.yearfolder;

import static patinary.yearfolder.Column.amount;
import static patinary.yearfolder.Column.number;
import static patinary.yearfolder.Column.text;

import java.util.List;
import patinary.homeuse.HomeUse;
import patinary.homeuse.HomeUses;
import patinary.money.Amount;
import patinary.taxyear.TaxTable;

/** The business use of the home in a year: one row where she said anything of it, a rate is known, and the form has a line for it. */
final class HomeTable {

    static final String NAME = "home-use";
    static final String LINE = "business_use_of_home";
    static final String BY_AREA = "by_area";

    private HomeTable() {}

    static FolderTable of(HomeUses uses, int year, TaxTable form) {
        return new FolderTable(
                NAME,
                List.of(
                        number("square_feet"),
                        number("most_square_feet"),
                        number("months"),
                        amount("rate_of_a_square_foot"),
                        amount(BY_AREA),
                        text("source"),
                        text("note")),
                rows -> uses.of(year).filter(use -> form.line(LINE).isPresent()).ifPresent(use -> row(rows, use)));
    }

    private static void row(FolderTable.Rows rows, HomeUse use) {
        rows.row(
                use.squareFeet(),
                use.rate().mostSquareFeet(),
                use.months(),
                Amount.of(use.rate().minorPerSquareFoot()),
                use.byArea(),
                use.rate().source(),
                use.note());
    }
}
