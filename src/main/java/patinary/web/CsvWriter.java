package patinary.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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

    private static final String END = "\r\n";

    private final Appendable out;
    private final ShopCurrency currency;

    public CsvWriter(Appendable out, ShopCurrency currency, List<String> headings) {
        this.currency = currency;
        this.out = out;
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

    /** In double quotes where the cell holds what would end it. A year has millions of cells, so each is looked at just once. */
    private static String quoted(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char sign = cell.charAt(i);
            if (sign == ',' || sign == '"' || sign == '\r' || sign == '\n') {
                return '"' + cell.replace("\"", "\"\"") + '"';
            }
        }
        return cell;
    }

    private void print(List<String> cells) {
        try {
            for (int i = 0; i < cells.size(); i++) {
                if (i > 0) {
                    out.append(',');
                }
                out.append(quoted(cells.get(i)));
            }
            out.append(END);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
