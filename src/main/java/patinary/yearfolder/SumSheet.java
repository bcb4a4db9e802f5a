package patinary.yearfolder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Worksheet;
import patinary.money.ShopCurrency;

/** The sheet on which every meaning is added up once, over the rows of the other sheets. */
final class SumSheet {

    static final String NAME = "sums";

    private static final String EXPENSES = "expenses";
    private static final int AMOUNT = 1;
    private static final int ADDS_TO = 2;

    private final Worksheet sheet;
    private final Map<String, SheetOfRows> tables;
    private final YearTables.Year year;
    private final ShopCurrency currency;
    private final Map<String, Integer> rows = new LinkedHashMap<>();

    SumSheet(Worksheet sheet, Map<String, SheetOfRows> tables, YearTables.Year year, ShopCurrency currency) {
        this.sheet = sheet;
        this.tables = tables;
        this.year = year;
        this.currency = currency;
        year.reckoning().terms().keySet().forEach(meaning -> rows.put(meaning, rows.size() + 1));
    }

    void write() {
        List<String> headings = List.of("meaning", "amount", "adds_to", "made_of");
        for (int i = 0; i < headings.size(); i++) {
            sheet.inlineString(0, i, headings.get(i));
            sheet.style(0, i).bold().set();
        }
        sheet.width(0, 28);
        sheet.width(AMOUNT, 14);
        sheet.width(3, 100);
        sheet.freezePane(0, 1);
        rows.forEach(this::row);
    }

    /** Where a meaning is added up; empty where it is not. */
    Optional<String> cell(String meaning) {
        return Optional.ofNullable(rows.get(meaning)).map(row -> "'" + NAME + "'!$B$" + (row + 1));
    }

    private void row(String meaning, int row) {
        List<Term> terms = year.reckoning().terms().getOrDefault(meaning, List.of());
        sheet.inlineString(row, 0, meaning);
        sheet.formula(
                row,
                AMOUNT,
                YearWorkbook.rounded(
                        terms.isEmpty()
                                ? "0"
                                : terms.stream()
                                        .map(term -> (term.minus() ? "-" : "+") + formula(term))
                                        .collect(Collectors.joining())
                                        .replaceFirst("^\\+", ""),
                        currency));
        sheet.style(row, AMOUNT).format(SheetOfRows.format(currency)).set();
        if (year.reckoning().expenses().contains(meaning)) {
            sheet.inlineString(row, ADDS_TO, EXPENSES);
        }
        sheet.inlineString(row, 3, year.reckoning().words(meaning).orElse(""));
    }

    private String formula(Term term) {
        if (term instanceof Term.Meaning other) {
            return cell(other.meaning()).orElse("0");
        }
        if (term instanceof Term.Rows over) {
            return "(" + overRows(over) + ")";
        }
        if (term instanceof Term.AtMost most) {
            return "MAX(0,MIN(" + overRows(most.rows()) + ","
                    + cell(most.meaning()).orElse("0") + "))";
        }
        return "SUMIFS($B$2:$B$" + (rows.size() + 1) + ",$C$2:$C$" + (rows.size() + 1) + ",\"" + EXPENSES + "\")";
    }

    private String overRows(Term.Rows over) {
        SheetOfRows of = tables.get(over.table());
        int amount = of.table().at(over.column());
        List<String> terms = new ArrayList<>();
        for (SheetOfRows.Range range : of.ranges()) {
            if (over.where().isEmpty()) {
                terms.add("SUM(" + range.of(amount) + ")");
            } else {
                String where = over.where().entrySet().stream()
                        .map(cell -> range.of(of.table().at(cell.getKey())) + ",\"" + cell.getValue() + "\"")
                        .collect(Collectors.joining(","));
                terms.add("SUMIFS(" + range.of(amount) + "," + where + ")");
            }
        }
        return YearWorkbook.sum(terms);
    }
}
