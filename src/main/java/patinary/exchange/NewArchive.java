package patinary.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import patinary.money.ShopCurrency;

/**
 * Writes an archive that no shop stands behind, as a zip, row by row: nothing of it is kept in memory. Whether it can be
 * taken in is asked where it is loaded, not here.
 */
public final class NewArchive implements AutoCloseable {

    /** The cells of a row by the names of their columns; a column that is not named stays empty. */
    public static final class Line {

        private final Map<String, @Nullable Object> cells = new LinkedHashMap<>();

        public Line with(String column, @Nullable Object value) {
            cells.put(column, value);
            return this;
        }
    }

    /** Takes the rows of a table. */
    @FunctionalInterface
    public interface Rows {

        void add(Line line);
    }

    /** Gives the rows of a table. */
    @FunctionalInterface
    public interface Filling {

        void fill(Rows rows);
    }

    private final ZipOutputStream zip;
    private final ArchiveWriter writer;

    public NewArchive(OutputStream to, ShopCurrency currency) {
        zip = new ZipOutputStream(to);
        writer = new ArchiveWriter(new ZipSink(zip), new Cells(currency));
    }

    /**
     * Writes one file.
     *
     * @throws IllegalArgumentException where the archive has no such table, or the table no such column
     */
    public void table(String name, Filling filling) throws IOException {
        ArchiveTable table = ArchiveTables.named(name);
        writer.begin(table);
        try {
            filling.fill(line -> writer.row(row(table, line)));
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        writer.end();
    }

    private static Row row(ArchiveTable table, Line line) {
        @Nullable Object[] values = new Object[table.columns().size()];
        line.cells.forEach((column, value) -> values[table.position(column)] = value);
        return new Row(table, 0, Arrays.asList(values));
    }

    /** Ends with the manifest. */
    @Override
    public void close() throws IOException {
        writer.close();
        zip.close();
    }
}
