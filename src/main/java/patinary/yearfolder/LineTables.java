package patinary.yearfolder;

import static patinary.yearfolder.Column.amount;
import static patinary.yearfolder.Column.day;
import static patinary.yearfolder.Column.number;
import static patinary.yearfolder.Column.text;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import patinary.taxbasis.Adjustment;
import patinary.taxyear.TaxLine;
import patinary.taxyear.TaxTable;
import patinary.taxyear.YearPage;

/** The summary by lines, what is on no line, and the mapping, as the page of the year has them. */
final class LineTables {

    static final String LINES = "lines";
    static final String ADJUSTMENTS = "tax-adjustments";
    static final String ON_NO_LINE = "on-no-line";
    private static final String MAPPING = "mapping";
    private static final String MILES = "miles_business";

    private LineTables() {}

    /** Money stands under "amount"; what is no money, such as miles, under "number". */
    static FolderTable lines(Supplier<YearPage> page, Reckoning reckoning, Supplier<BigDecimal> miles) {
        return new FolderTable(
                LINES,
                List.of(
                        text("part"),
                        text("line"),
                        text("title"),
                        text("meaning"),
                        amount("amount"),
                        number("number"),
                        text("made_of"),
                        text("source_of_the_line"),
                        text("how_well_known")),
                rows -> page.get()
                        .parts()
                        .forEach(part -> part.lines().forEach(line -> rows.row(cells(line, reckoning, miles)))));
    }

    private static @Nullable Object[] cells(YearPage.Line line, Reckoning reckoning, Supplier<BigDecimal> miles) {
        TaxLine form = line.line();
        return new Object[] {
            form.part(),
            form.line(),
            form.title(),
            form.meaning(),
            line.amount(),
            form.meaning().equals(MILES) ? miles.get() : null,
            reckoning.words(form.meaning()).orElse(""),
            form.source(),
            form.status()
        };
    }

    /**
     * What the year counts otherwise for tax than the books have it, by document, supply, piece or buyer. Amounts are tax less
     * books: above zero raises the profit for tax.
     */
    static FolderTable adjustments(Supplier<YearPage> page, TaxTable table) {
        return new FolderTable(
                ADJUSTMENTS,
                List.of(
                        text("reason"),
                        day("date"),
                        text("kind"),
                        text("about"),
                        text("title"),
                        text("account"),
                        text("category"),
                        text("tax_line"),
                        text("meaning"),
                        text("other_side"),
                        amount("end_of_year_before"),
                        amount("end_of_year"),
                        amount("opening_adjustment"),
                        amount("change_within_year"),
                        amount("profit_for_tax")),
                rows -> page.get().adjustments().rows().forEach(row -> rows.row(cells(row, table))));
    }

    private static @Nullable Object[] cells(Adjustment row, TaxTable table) {
        String meaning =
                table.meaning(row.reason().result().name(), row.category()).orElse("");
        return new Object[] {
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
            row.profit()
        };
    }

    static FolderTable onNoLine(Supplier<YearPage> page) {
        return new FolderTable(
                ON_NO_LINE,
                List.of(text("account"), text("category"), amount("amount")),
                rows -> page.get().unmapped().forEach(sum -> rows.row(sum.account(), sum.category(), sum.shown())));
    }

    static FolderTable mapping(TaxTable table) {
        return new FolderTable(
                MAPPING,
                List.of(text("account"), text("category"), text("meaning"), text("line")),
                rows -> table.map().keySet().stream().sorted().forEach(key -> {
                    String meaning = table.map().get(key);
                    int between = key.indexOf('|');
                    rows.row(
                            key.substring(0, between),
                            key.substring(between + 1),
                            meaning,
                            table.line(String.valueOf(meaning))
                                    .map(TaxLine::line)
                                    .orElse(""));
                }));
    }
}
