package patinary.yearfolder;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.dhatim.fastexcel.Worksheet;
import patinary.money.ShopCurrency;
import patinary.taxyear.YearPage;

/** The summary by lines: each amount is what the sheet of sums has for its meaning. */
final class LineSheet {

    private static final List<String> HEADINGS =
            List.of("part", "line", "title", "amount", "meaning", "made_of", "how_well_known");
    private static final int AMOUNT = 3;
    private static final String MILES = "miles_business";

    private final Worksheet sheet;
    private final SumSheet sums;
    private final YearTables.Year year;
    private final FolderWords words;
    private final ShopCurrency currency;
    private int row;

    LineSheet(Worksheet sheet, SumSheet sums, YearTables.Year year, FolderWords words, ShopCurrency currency) {
        this.sheet = sheet;
        this.sums = sums;
        this.year = year;
        this.words = words;
        this.currency = currency;
    }

    void write() {
        sheet.inlineString(row++, 0, words.title(year.year()));
        sheet.style(0, 0).bold().set();
        sheet.inlineString(row++, 0, words.notAdvice());
        sheet.inlineString(row++, 0, words.basis(year));
        for (int i = 0; i < HEADINGS.size(); i++) {
            sheet.inlineString(row, i, HEADINGS.get(i));
            sheet.style(row, i).bold().set();
        }
        row++;
        sheet.width(0, 20);
        sheet.width(2, 60);
        sheet.width(AMOUNT, 14);
        sheet.width(4, 24);
        sheet.width(5, 80);
        sheet.freezePane(0, row);
        year.page().parts().forEach(part -> part.lines().forEach(this::line));
    }

    private void line(YearPage.Line line) {
        String meaning = line.line().meaning();
        sheet.inlineString(row, 0, line.line().part());
        sheet.inlineString(row, 1, line.line().line());
        sheet.inlineString(row, 2, line.line().title());
        amount(line, meaning);
        sheet.inlineString(row, 4, meaning);
        sheet.inlineString(row, 5, year.reckoning().words(meaning).orElse(""));
        sheet.inlineString(row, 6, line.line().status());
        row++;
    }

    /** What the page has and no row of the folder adds up to stands as it is. */
    private void amount(YearPage.Line line, String meaning) {
        boolean miles = meaning.equals(MILES);
        Optional<String> sum = line.amount() == null && !miles ? Optional.empty() : sums.cell(meaning);
        if (sum.isPresent()) {
            sheet.formula(row, AMOUNT, sum.get());
        } else if (line.amount() != null) {
            sheet.value(row, AMOUNT, BigDecimal.valueOf(line.amount().minor(), currency.digits()));
        }
        sheet.style(row, AMOUNT)
                .format(miles ? "0.0" : SheetOfRows.format(currency))
                .set();
    }
}
