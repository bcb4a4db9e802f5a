package patinary.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/**
 * A table as a file for spreadsheets: RFC 4180, UTF-8. Amounts, numbers and days are written bare, so that they stay
 * numbers; any other cell that a spreadsheet could take for a formula gets a single quote in front (OWASP ASVS 5.0
 * requirement 1.2.10; CWE-1236). Text that already is quotes followed by such a character gets one more, so that taking
 * one away always gives the text back.
 */
public final class CsvFile {

    private static final MediaType TYPE = new MediaType("text", "csv", StandardCharsets.UTF_8);

    /** Characters that start a formula somewhere: = + - @, tab, line ends, null, and the wide forms of the first four. */
    private static final Pattern RISKY =
            Pattern.compile("'*[=+\\-@\\t\\r\\n\\u0000\\uff1d\\uff0b\\uff0d\\uff20].*", Pattern.DOTALL);

    private final StringBuilder text = new StringBuilder();
    private final CSVPrinter printer;
    private final ShopCurrency currency;

    public CsvFile(ShopCurrency currency, String... headings) {
        this.currency = currency;
        try {
            printer = new CSVPrinter(text, CSVFormat.RFC4180);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        print(List.of(headings));
    }

    /** Adds a row; a cell is an {@link Amount}, a number, a day, a text or null for an empty cell. */
    public CsvFile row(@Nullable Object... cells) {
        print(Arrays.stream(cells).map(this::cell).toList());
        return this;
    }

    public byte[] bytes() {
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The file as an answer that a browser saves. */
    public ResponseEntity<byte[]> download(String name) {
        return ResponseEntity.ok()
                .contentType(TYPE)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(bytes());
    }

    /** The text with a quote in front where a spreadsheet could take it for a formula. */
    static String harmless(String cell) {
        return RISKY.matcher(cell).matches() ? "'" + cell : cell;
    }

    private String cell(@Nullable Object cell) {
        if (cell == null) {
            return "";
        }
        if (cell instanceof Amount amount) {
            return currency.plain(amount);
        }
        if (cell instanceof BigDecimal number) {
            return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        }
        boolean plain = cell instanceof Number || cell instanceof java.time.LocalDate || cell instanceof Boolean;
        return plain ? cell.toString() : harmless(cell.toString());
    }

    private void print(List<String> cells) {
        try {
            printer.printRecord(cells);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
