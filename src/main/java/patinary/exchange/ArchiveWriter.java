package patinary.exchange;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Calculation;

/** Writes the files of an archive one after the other, and at the end the manifest with the hash of each. */
final class ArchiveWriter implements AutoCloseable {

    private final ArchiveSink sink;
    private final Cells cells;
    private final Map<String, String> manifest = new LinkedHashMap<>();
    private MessageDigest digest = Manifest.digest();
    private @Nullable CSVPrinter printer;
    private String file = "";

    ArchiveWriter(ArchiveSink sink, Cells cells) {
        this.sink = sink;
        this.cells = cells;
        manifest.put(Manifest.FORMAT, String.valueOf(ArchiveTables.FORMAT));
        manifest.put(Manifest.CALCULATION, String.valueOf(Calculation.VERSION));
    }

    void begin(ArchiveTable table) throws IOException {
        begin(table.file(), table.columns().stream().map(Column::name).toList());
    }

    void row(Row row) {
        List<Column> columns = row.table().columns();
        print(IntStream.range(0, columns.size())
                .mapToObj(i -> cells.write(columns.get(i), row.values().get(i)))
                .toList());
    }

    void end() throws IOException {
        if (printer != null) {
            printer.close();
            printer = null;
            manifest.put(file, Manifest.text(digest));
        }
    }

    /** A file of a few rows that is no table of the shop. */
    void file(String name, List<String> header, List<List<String>> rows) throws IOException {
        begin(name, header);
        rows.forEach(this::print);
        end();
    }

    /** A file that is no table, as it is. */
    void file(String name, Path content) throws IOException {
        digest = Manifest.digest();
        try (var stream = new DigestOutputStream(sink.open(name), digest)) {
            Files.copy(content, stream);
        }
        manifest.put(name, Manifest.text(digest));
    }

    /** Says that a file should be here and is not, so that nobody takes the archive for damaged. */
    void missing(String name) {
        manifest.put(name, Manifest.MISSING);
    }

    /** Ends with the manifest. */
    @Override
    public void close() throws IOException {
        end();
        Map<String, String> entries = new LinkedHashMap<>(manifest);
        begin(Manifest.FILE, List.of(Manifest.NAME, Manifest.VALUE));
        entries.forEach((name, value) -> print(List.of(name, value)));
        end();
    }

    private void begin(String name, List<String> header) throws IOException {
        file = name;
        digest = Manifest.digest();
        var stream = new DigestOutputStream(sink.open(name), digest);
        printer = new CSVPrinter(
                new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8)), CsvFile.FORMAT);
        print(header);
    }

    private void print(List<String> texts) {
        try {
            java.util.Objects.requireNonNull(printer).printRecord(texts);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
