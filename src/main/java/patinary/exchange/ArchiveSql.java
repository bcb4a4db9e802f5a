package patinary.exchange;

import java.util.ArrayList;
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

    /** Whether a row counts its own changes; those of a document are counted with all documents. */
    static boolean isVersioned(ArchiveTable table) {
        return table.kind() == null && table.hasId();
    }

    /** All rows, documents and their lines by date first; texts are put in order later, where databases differ. */
    static String select(ArchiveTable table) {
        String documents = table.document() == null ? "" : " join document d on d.id = t." + table.document();
        return "select " + fields(table) + " from " + table.name() + " t" + documents + " order by "
                + (table.document() == null ? "" : "d.doc_date, ") + key(table);
    }

    /** The rows of a member of a family that belong to one of so many. */
    static String select(Family.Member member, int owners) {
        ArchiveTable table = member.table();
        if (member.isWhole()) {
            return select(table);
        }
        String documents = table.kind() == null ? "" : " join document d on d.id = t.id";
        return "select " + fields(table) + " from " + table.name() + " t" + documents + " where t."
                + member.ownerColumn().field() + " in (" + "?, ".repeat(owners - 1) + "?) order by " + key(table);
    }

    static String delete(Family.Member member) {
        return "delete from " + member.table().name()
                + (member.isWhole() ? "" : " where " + member.ownerColumn().field() + " = ?");
    }

    /** Changes the row with an id; the id comes last. */
    static String update(ArchiveTable table) {
        List<String> changes = new ArrayList<>();
        own(table).stream()
                .filter(column -> !column.name().equals("id"))
                .forEach(column -> changes.add(column.field() + " = ?"));
        if (table.kind() == null) {
            changes.add("version = version + 1");
        }
        return changes.isEmpty()
                ? ""
                : "update " + table.name() + " set " + String.join(", ", changes) + " where id = ?";
    }

    private static String fields(ArchiveTable table) {
        return table.columns().stream()
                .map(column -> (ofDocument(table, column) ? "d." : "t.") + column.field())
                .collect(Collectors.joining(", "));
    }

    private static String key(ArchiveTable table) {
        return table.key().stream()
                .map(name -> "t." + table.columns().get(table.position(name)).field())
                .collect(Collectors.joining(", "));
    }

    private static boolean ofDocument(ArchiveTable table, Column column) {
        return table.kind() != null && OF_DOCUMENT.contains(column.name());
    }
}
