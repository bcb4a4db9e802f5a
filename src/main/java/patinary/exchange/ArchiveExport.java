package patinary.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.ShopCurrency;
import patinary.shop.CurrentShop;

/** Writes the whole shop as it is at one moment. */
@Service
class ArchiveExport {

    private static final int STEP = 10_000;
    private static final int FETCHED_AT_ONCE = 500;

    private final JdbcTemplate jdbc;
    private final CurrentShop shop;
    private final PhotoExport photos;

    ArchiveExport(DataSource store, CurrentShop shop, PhotoExport photos) {
        jdbc = new JdbcTemplate(store);
        jdbc.setFetchSize(FETCHED_AT_ONCE);
        this.shop = shop;
        this.photos = photos;
    }

    /** All files are of one moment, however long writing them takes. */
    @Transactional(readOnly = true, isolation = Isolation.SERIALIZABLE)
    public void write(ArchiveSink sink, Progress progress) throws IOException {
        write(sink, false, progress);
    }

    /** The same with {@link BookFigures} beside it, by which a backup is held against what is made of it later. */
    @Transactional(readOnly = true, isolation = Isolation.SERIALIZABLE)
    public void writeWithFigures(ArchiveSink sink, Progress progress) throws IOException {
        write(sink, true, progress);
    }

    /**
     * The one snapshot is the isolation above: what H2 calls repeatable read begins one for each table when it is first
     * read, so that a document could be there without its lines.
     */
    private void write(ArchiveSink sink, boolean withFigures, Progress progress) throws IOException {
        ShopCurrency currency = shop.currency();
        try (ArchiveWriter writer = new ArchiveWriter(sink, new Cells(currency))) {
            for (ArchiveTable table : ArchiveTables.ALL) {
                write(table, writer, new Fields(currency), progress);
            }
            if (withFigures) {
                writer.file(
                        BookFigures.FILE,
                        BookFigures.HEADER,
                        BookFigures.of(jdbc).lines(currency));
            }
            photos.write(writer, progress);
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private void write(ArchiveTable table, ArchiveWriter writer, Fields fields, Progress progress) throws IOException {
        writer.begin(table);
        long[] count = {0};
        rows(table, fields, row -> {
            writer.row(row);
            if (++count[0] % STEP == 0) {
                progress.at(table.file(), count[0]);
            }
        });
        writer.end();
        progress.at(table.file(), count[0]);
    }

    private void rows(ArchiveTable table, Fields fields, Consumer<Row> rows) {
        boolean byText = table.isKeptByText();
        List<Row> kept = new ArrayList<>();
        jdbc.query(ArchiveSql.select(table), result -> {
            Row row = row(table, fields, result);
            if (byText) {
                kept.add(row);
            } else {
                rows.accept(row);
            }
        });
        // Each database has its own order of letters; the archive has one.
        kept.sort(Comparator.comparing(row -> row.joined(table.key())));
        kept.forEach(rows);
    }

    static Row row(ArchiveTable table, Fields fields, ResultSet result) throws SQLException {
        List<@Nullable Object> values = new ArrayList<>();
        for (Column column : table.columns()) {
            values.add(fields.get(result, column));
        }
        return new Row(table, 0, values);
    }
}
