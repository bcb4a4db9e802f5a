package patinary.yearfolder;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import patinary.money.ShopCurrency;

/**
 * Writes all tables of a year as sheets of one workbook (ISO/IEC 29500), row by row, with the summary by lines in front whose
 * amounts are sums over the other sheets. Texts are written as texts, so no text is ever a formula.
 */
final class YearWorkbook {

    private static final String PROGRAM = "Patinary";
    private static final String VERSION = "1.0";

    private final ShopCurrency currency;
    private final FolderWords words;

    YearWorkbook(ShopCurrency currency, FolderWords words) {
        this.currency = currency;
        this.words = words;
    }

    void write(YearTables.Year year, OutputStream out) throws IOException {
        try (Workbook workbook = new Workbook(out, PROGRAM, VERSION)) {
            // The first three rest on the others and stay open until those are written.
            Worksheet lines = workbook.newWorksheet(LineTables.LINES);
            Worksheet sums = workbook.newWorksheet(SumSheet.NAME);
            Worksheet checks = workbook.newWorksheet(CheckSheet.NAME);
            Map<String, SheetOfRows> written = new LinkedHashMap<>();
            for (FolderTable table : year.tables()) {
                if (!table.name().equals(LineTables.LINES)) {
                    written.put(table.name(), rows(workbook, table));
                }
            }
            SumSheet all = new SumSheet(sums, written, year, currency);
            all.write();
            new LineSheet(lines, all, year, words, currency).write();
            new CheckSheet(checks, all, written, words, currency).write();
        }
    }

    private SheetOfRows rows(Workbook workbook, FolderTable table) throws IOException {
        SheetOfRows sheet = new SheetOfRows(workbook, table, currency);
        try {
            table.content().to(sheet::row);
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        sheet.end();
        return sheet;
    }

    /** Adds up terms such as ranges; no term is nothing. */
    static String sum(List<String> terms) {
        return terms.isEmpty() ? "0" : String.join("+", terms);
    }

    /** Sums of binary fractions go astray far behind the point; what is shown is what is meant. */
    static String rounded(String formula, ShopCurrency currency) {
        return "ROUND(" + formula + "," + currency.digits() + ")";
    }
}
