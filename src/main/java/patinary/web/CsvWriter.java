package patinary.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/**
 * Writes a table row by row and keeps none of it: RFC 4180. Amounts, numbers and days are written bare, so that they stay
 * numbers; any other cell that a spreadsheet could take for a formula gets a single quote in front (OWASP ASVS 5.0
 * requirement 1.2.10; CWE-1236). Text that already is quotes followed by such a character gets one more, so that taking
 * one away always gives the text back.
 */
public final class CsvWriter {

    /** Characters that start a formula somewhere: = + - @, tab, line ends, null, and the wide forms of the first four. */
    private static final String RISKY = "=+-@\t\r\n\u0000\uff1d\uff0b\uff0d\uff20";

    private final CSVPrinter printer;
    private final ShopCurrency currency;

    public CsvWriter(Appendable out, ShopCurrency currency, List<String> headings) {
        this.currency = currency;
        try {
            printer = new CSVPrinter(out, CSVFormat.RFC4180);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        print(headings);
    }

    /**
     * Adds a row; a cell is an {@link Amount}, a number, a day, a text or null for an empty cell.
     *
     * @throws UncheckedIOException where it cannot be written
     */
    public void row(@Nullable Object... cells) {
        List<String> texts = new ArrayList<>(cells.length);
        for (Object cell : cells) {
            texts.add(text(cell));
        }
        print(texts);
    }

    /** The text with a quote in front where a spreadsheet could take it for a formula. */
    static String harmless(String cell) {
        int at = 0;
        while (at < cell.length() && cell.charAt(at) == '\'') {
            at++;
        }
        return at < cell.length() && RISKY.indexOf(cell.charAt(at)) >= 0 ? "'" + cell : cell;
    }

    private String text(@Nullable Object cell) {
        if (cell == null) {
            return "";
        }
        if (cell instanceof String text) {
            return harmless(text);
        }
        if (cell instanceof Amount amount) {
            return currency.plain(amount);
        }
        if (cell instanceof BigDecimal number) {
            return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        }
        boolean plain = cell instanceof Number || cell instanceof LocalDate || cell instanceof Boolean;
        return plain ? cell.toString() : harmless(cell.toString());
    }

    private void print(List<String> cells) {
        try {
            printer.printRecord(cells);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
