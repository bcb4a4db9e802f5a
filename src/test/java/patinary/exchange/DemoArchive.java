package patinary.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import patinary.demo.DemoShop;
import patinary.demo.Rows;
import patinary.money.ShopCurrency;

/** Writes the invented shop as an archive, in the order in which an export writes it. */
final class DemoArchive {

    private static final Path FOLDER = Path.of("db", "demo");

    private final Cells cells = new Cells(ShopCurrency.ofCode("USD"));
    private final Map<Object, LocalDate> dates = new HashMap<>();

    private DemoArchive() {}

    /** Renews db/demo; to be run by hand after the generator changed. */
    public static void main(String[] arguments) throws IOException {
        MemoryArchive fresh = invent();
        for (Map.Entry<String, byte[]> file : fresh.files().entrySet()) {
            Files.write(FOLDER.resolve(file.getKey()), file.getValue());
        }
    }

    static MemoryArchive invent() throws IOException {
        return new DemoArchive().write(DemoShop.invent());
    }

    private MemoryArchive write(Rows rows) throws IOException {
        MemoryArchive archive = new MemoryArchive();
        try (ArchiveWriter writer = new ArchiveWriter(archive.sink(), cells)) {
            for (ArchiveTable table : ArchiveTables.ALL) {
                writer.begin(table);
                read(table, rows.of(table.name())).stream().sorted(order(table)).forEach(writer::row);
                writer.end();
            }
        }
        return archive;
    }

    private Comparator<Row> order(ArchiveTable table) {
        Comparator<Row> order = Comparator.comparing(
                row -> table.document() == null ? LocalDate.EPOCH : dates.get(row.get(table.document())));
        for (String key : table.key()) {
            order = table.columns().get(table.position(key)).type() == Type.WHOLE
                    ? order.thenComparing(row -> (Integer) row.get(key))
                    : order.thenComparing(row -> row.word(key));
        }
        return order;
    }

    private List<Row> read(ArchiveTable table, List<List<String>> texts) {
        List<Row> rows = new ArrayList<>();
        for (List<String> text : texts) {
            Row row = row(table, text);
            if (table.kind() != null) {
                dates.put(row.get("id"), row.date("date"));
            }
            rows.add(row);
        }
        return rows;
    }

    private Row row(ArchiveTable table, List<String> texts) {
        List<@Nullable Object> values = new ArrayList<>();
        if (texts.size() != table.columns().size()) {
            throw new IllegalArgumentException(table.name() + ": " + texts);
        }
        for (int i = 0; i < texts.size(); i++) {
            Column column = table.columns().get(i);
            try {
                String cell = column.type() == Type.TEXT ? SafeText.guard(texts.get(i)) : texts.get(i);
                values.add(cells.read(column, cell));
            } catch (Cells.Unreadable unreadable) {
                throw new IllegalArgumentException(
                        table.name() + "." + column.name() + ": " + texts.get(i), unreadable);
            }
        }
        return new Row(table, 0, values);
    }
}
