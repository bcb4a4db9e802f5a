package patinary.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** A table of modest size as a file for spreadsheets, UTF-8; {@link CsvWriter} says how its cells are written. */
public final class CsvFile {

    private static final MediaType TYPE = new MediaType("text", "csv", StandardCharsets.UTF_8);

    private final StringBuilder text = new StringBuilder();
    private final CsvWriter writer;

    public CsvFile(ShopCurrency currency, String... headings) {
        writer = new CsvWriter(text, currency, List.of(headings));
    }

    /** Adds a row; a cell is an {@link Amount}, a number, a day, a text or null for an empty cell. */
    public CsvFile row(@Nullable Object... cells) {
        writer.row(cells);
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
}
