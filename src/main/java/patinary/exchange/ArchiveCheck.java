package patinary.exchange;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads a whole archive and finds everything in it that could not be stored, before anything is. */
final class ArchiveCheck {

    /** Where a document stands in the archive. */
    record Place(String file, long line) {}

    private final Map<String, Set<Object>> ids = new HashMap<>();
    private final Map<String, Set<String>> keys = new HashMap<>();
    private final Map<UUID, Place> documents = new HashMap<>();
    private final Map<UUID, String> labels = new HashMap<>();
    /** The photos' rows by the file that each names. */
    private final Map<String, Row> pictures = new TreeMap<>();

    private final Set<String> lost = new HashSet<>();
    private final ArchiveSource source;
    private final ErrorList errors = new ErrorList();
    private final Progress progress;

    ArchiveCheck(ArchiveSource source, Progress progress) {
        this.source = source;
        this.progress = progress;
    }

    /**
     * Reads everything.
     *
     * @return how this archive's cells are read
     * @throws ArchiveRefused with all errors, where there are any
     */
    Cells run() throws IOException {
        Cells cells = new Cells(new ShopFile(source).currency());
        lost.addAll(new ManifestCheck(source, errors).run());
        RowReader reader = new RowReader(source, cells, errors, progress);
        for (ArchiveTable table : ArchiveTables.ALL) {
            ids.put(table.name(), new HashSet<>());
            table.keys().forEach(key -> keys.put(name(table.name(), key), new HashSet<>()));
            // A shop may have no rows of a kind, and an archive of an earlier release knows fewer files.
            if (source.names().contains(table.file())) {
                reader.read(table, this::check);
            }
        }
        pictures();
        errors.refuseIfAny();
        return cells;
    }

    @Nullable
    Place where(UUID document) {
        return documents.get(document);
    }

    /** How people call a piece or a supply. */
    String label(@Nullable UUID thing) {
        return thing == null ? "" : labels.getOrDefault(thing, thing.toString());
    }

    private void check(Row row) {
        ArchiveTable table = row.table();
        table.keys().forEach(key -> once(row, key));
        if (table.hasId()) {
            UUID id = (UUID) row.get("id");
            ids.get(table.name()).add(id);
            noted(row, id);
        }
        table.columns().forEach(column -> refers(row, column));
        table.within().forEach(within -> stands(row, within));
        for (Rule rule : table.rules()) {
            if (!rule.holds().test(row)) {
                error(row, rule.column(), rule.reason());
            }
        }
    }

    private void once(Row row, List<String> key) {
        String column = key.get(key.size() - 1);
        if (!keys.get(name(row.table().name(), key)).add(row.joined(key))) {
            error(row, column, "twice", String.join(" + ", key));
        }
    }

    private void noted(Row row, UUID id) {
        if (row.table().kind() != null) {
            Place earlier = documents.putIfAbsent(id, new Place(row.table().file(), row.line()));
            if (earlier != null && !earlier.file().equals(row.table().file())) {
                error(row, "id", "twice", earlier.file() + ", " + earlier.line());
            }
        } else if (row.table().name().equals("piece")) {
            labels.put(id, row.word("code") + " " + row.word("title"));
        } else if (row.table().name().equals("supply")) {
            labels.put(id, row.word("name"));
        } else if (row.table().name().equals(PhotoTables.NAME)) {
            pictures.putIfAbsent(PhotoTables.file(row.word("sha256")), row);
            if (row.has("document_id") && !documents.containsKey(row.get("document_id"))) {
                error(row, "document_id", "dangling", "*.csv");
            }
        }
    }

    /** Every photo has its picture, and every picture its photo. */
    private void pictures() throws IOException {
        for (Map.Entry<String, Row> picture : pictures.entrySet()) {
            String name = picture.getKey();
            if (!source.names().contains(name)) {
                if (!lost.contains(name)) {
                    errors.add(ArchiveError.ofFile(name, "file-missing"));
                }
                continue;
            }
            String wrong = PhotoImport.wrong(source, picture.getValue());
            if (!wrong.isEmpty()) {
                errors.add(ArchiveError.ofFile(name, wrong));
            }
        }
        source.names().stream()
                .filter(PhotoTables::isFile)
                .filter(name -> !pictures.containsKey(name))
                .forEach(name -> errors.add(ArchiveError.ofFile(name, "photo-unknown")));
    }

    private void refers(Row row, Column column) {
        Object value = row.get(column.name());
        if (value != null
                && !column.references().isEmpty()
                && column.references().stream()
                        .noneMatch(table -> ids.getOrDefault(table, Set.of()).contains(value))) {
            error(row, column.name(), "dangling", String.join(".csv / ", column.references()) + ".csv");
        }
    }

    private void stands(Row row, ArchiveTable.Within within) {
        ArchiveTable other = ArchiveTables.named(within.table());
        if (!keys.get(name(within.table(), other.key())).contains(row.joined(within.columns()))) {
            error(row, within.columns().get(within.columns().size() - 1), "dangling", other.file());
        }
    }

    private void error(Row row, String column, String reason, String... arguments) {
        String value = row.has(column) ? row.word(column) : "";
        errors.add(ArchiveError.of(row.table().file(), row.line(), column, value, reason, arguments));
    }

    private static String name(String table, List<String> key) {
        return table + " " + key;
    }
}
