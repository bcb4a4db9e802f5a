package patinary.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import patinary.money.ShopCurrency;

/**
 * Writes an archive that no shop stands behind, as a zip, row by row: nothing of it is kept in memory. Whether it can be
 * taken in is asked where it is loaded, not here.
 */
public final class NewArchive implements AutoCloseable {

    /** Takes the rows of a table, each as names of columns and values by turns; a column that is not named stays empty. */
    @FunctionalInterface
    public interface Rows {

        void add(@Nullable Object... namesAndValues);
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
            filling.fill(cells -> writer.row(row(table, cells)));
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        writer.end();
    }

    private static Row row(ArchiveTable table, @Nullable Object[] namesAndValues) {
        @Nullable Object[] values = new Object[table.columns().size()];
        for (int i = 0; i < namesAndValues.length; i += 2) {
            values[table.position(String.valueOf(namesAndValues[i]))] = namesAndValues[i + 1];
        }
        return new Row(table, 0, Arrays.asList(values));
    }

    /** Ends with the manifest. */
    @Override
    public void close() throws IOException {
        writer.close();
        zip.close();
    }
}
