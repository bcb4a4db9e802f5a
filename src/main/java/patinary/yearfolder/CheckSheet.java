package patinary.yearfolder;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Worksheet;
import patinary.money.ShopCurrency;

/** The sheet that says whether the sheets agree with each other: each difference is reckoned there and must be zero. */
final class CheckSheet {

    static final String NAME = "checks";

    private final Worksheet sheet;
    private final SumSheet sums;
    private final Map<String, SheetOfRows> tables;
    private final FolderWords words;
    private final ShopCurrency currency;
    private int row;

    CheckSheet(
            Worksheet sheet, SumSheet sums, Map<String, SheetOfRows> tables, FolderWords words, ShopCurrency currency) {
        this.sheet = sheet;
        this.sums = sums;
        this.tables = tables;
        this.words = words;
        this.currency = currency;
    }

    void write() {
        List<String> headings = List.of("check", "difference", "holds");
        for (int i = 0; i < headings.size(); i++) {
            sheet.inlineString(0, i, headings.get(i));
            sheet.style(0, i).bold().set();
        }
        sheet.width(0, 90);
        sheet.width(1, 14);
        row = 1;
        check("journal", total(ProfitTables.JOURNAL, "amount"));
        check("cost", cell("cogs_total") + "-" + cell("cost_of_goods_sold"));
        check("by-piece", total(ProfitTables.COST_BY_PIECE, "cost") + "-" + what("COST"));
        check("arose", total(StockTables.HOW, "cost") + "-" + total(StockTables.AT_END, "cost"));
        check(
                "profit",
                profit() + "-("
                        + journal(
                                "SALES",
                                "SHIPPING_CHARGED",
                                "REFUNDS",
                                "OTHER_INCOME",
                                "EXPENSE",
                                "FEES",
                                "POSTAGE",
                                "ROUNDING",
                                "VEHICLE",
                                "COST_OF_PIECES",
                                "COST_OF_RETAIL",
                                "WRITE_OFFS",
                                "FOUND_AT_COUNT")
                        + ")");
        check(
                "vehicle",
                total(MoneyTables.TRIPS, "amount") + "-(" + journal("VEHICLE").replaceFirst("^-", "") + ")");
        check("balances", total(MoneyTables.BALANCES, "amount"));
        check("reported", total(MoneyTables.REPORTED, "amount"));
        int last = row;
        sheet.inlineString(row, 0, words.check("all"));
        sheet.formula(row, 1, "SUMSQ($B$2:$B$" + last + ")");
        holds();
    }

    private void check(String key, String difference) {
        sheet.inlineString(row, 0, words.check(key));
        sheet.formula(row, 1, YearWorkbook.rounded(difference, currency));
        holds();
        row++;
    }

    private void holds() {
        sheet.style(row, 1).format(SheetOfRows.format(currency)).set();
        sheet.formula(row, 2, "IF($B$" + (row + 1) + "=0,\"yes\",\"no\")");
    }

    private String cell(String meaning) {
        return sums.cell(meaning).orElse("0");
    }

    /** By the sheets of rows: income less expenses less cost. */
    private String profit() {
        return total(ProfitTables.INCOME, "amount") + "-" + total(ProfitTables.EXPENSES, "amount") + "-" + what("COST");
    }

    private String total(String table, String column) {
        SheetOfRows of = tables.get(table);
        int at = of.table().at(column);
        return "("
                + YearWorkbook.sum(of.ranges().stream()
                        .map(range -> "SUM(" + range.of(at) + ")")
                        .toList()) + ")";
    }

    private String what(String what) {
        return where(ProfitTables.PURCHASES, "what", what);
    }

    /** What the journal has as profit on some accounts. */
    private String journal(String... accounts) {
        return "-"
                + List.of(accounts).stream()
                        .map(account -> where(ProfitTables.JOURNAL, "account", account))
                        .collect(Collectors.joining("-"));
    }

    private String where(String table, String column, String value) {
        SheetOfRows of = tables.get(table);
        return "("
                + YearWorkbook.sum(of.ranges().stream()
                        .map(range -> "SUMIFS(" + range.of(of.table().at("amount")) + ","
                                + range.of(of.table().at(column)) + ",\"" + value + "\")")
                        .toList())
                + ")";
    }
}
