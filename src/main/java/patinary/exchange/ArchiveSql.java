package patinary.exchange;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The statements that a table's list of columns stands for. */
final class ArchiveSql {

    private static final Set<String> OF_DOCUMENT = Set.of("date", "note", "recorded_at");

    private ArchiveSql() {}

    /** The columns that the table itself keeps; a document's date and note are kept with all documents. */
    static List<Column> own(ArchiveTable table) {
        return table.columns().stream()
                .filter(column -> !ofDocument(table, column))
                .toList();
    }

    static String insert(ArchiveTable table) {
        List<String> fields = own(table).stream().map(Column::field).toList();
        boolean versioned = table.kind() == null && table.hasId();
        return "insert into " + table.name() + " (" + String.join(", ", fields) + (versioned ? ", version" : "")
                + ") values (" + fields.stream().map(field -> "?").collect(Collectors.joining(", "))
                + (versioned ? ", 0)" : ")");
    }

    /** All rows, documents and their lines by date first; texts are put in order later, where databases differ. */
    static String select(ArchiveTable table) {
        String fields = table.columns().stream()
                .map(column -> (ofDocument(table, column) ? "d." : "t.") + column.field())
                .collect(Collectors.joining(", "));
        String key = table.key().stream()
                .map(name -> "t." + table.columns().get(table.position(name)).field())
                .collect(Collectors.joining(", "));
        String documents = table.document() == null ? "" : " join document d on d.id = t." + table.document();
        return "select " + fields + " from " + table.name() + " t" + documents + " order by "
                + (table.document() == null ? "" : "d.doc_date, ") + key;
    }

    private static boolean ofDocument(ArchiveTable table, Column column) {
        return table.kind() != null && OF_DOCUMENT.contains(column.name());
    }
}
