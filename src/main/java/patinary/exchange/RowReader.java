package patinary.exchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Reads the rows of a table; a row with an error is told of and left out. */
final class RowReader {

    private static final int STEP = 10_000;

    private final ArchiveSource source;
    private final Cells cells;
    private final ErrorList errors;
    private final Progress progress;

    RowReader(ArchiveSource source, Cells cells, ErrorList errors, Progress progress) {
        this.source = source;
        this.cells = cells;
        this.errors = errors;
        this.progress = progress;
    }

    void read(ArchiveTable table, Consumer<Row> rows) throws IOException {
        List<String> names = table.columns().stream().map(Column::name).toList();
        long[] count = {0};
        new CsvFile(source, errors).read(table.file(), names, table.later(), (line, texts) -> {
            Row row = row(table, line, texts);
            if (row != null) {
                rows.accept(row);
            }
            if (++count[0] % STEP == 0) {
                progress.at(table.file(), count[0]);
            }
        });
        progress.at(table.file(), count[0]);
    }

    private @Nullable Row row(ArchiveTable table, long line, List<String> texts) {
        List<@Nullable Object> values = new ArrayList<>();
        boolean right = true;
        for (int i = 0; i < texts.size(); i++) {
            Column column = table.columns().get(i);
            try {
                values.add(cells.read(column, texts.get(i)));
            } catch (Cells.Unreadable unreadable) {
                errors.add(ArchiveError.of(
                        table.file(),
                        line,
                        column.name(),
                        texts.get(i),
                        unreadable.reason(),
                        String.join(", ", column.words()),
                        String.valueOf(column.size())));
                right = false;
            }
        }
        return right ? new Row(table, line, values) : null;
    }
}
