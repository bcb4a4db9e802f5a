package patinary.exchange;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes the tables of docs/handbook/archive.md from the list of tables; run it by hand after a change and paste. */
final class ArchivePages {

    private ArchivePages() {}

    public static void main(String[] arguments) {
        ArchiveTables.ALL.forEach(table -> System.out.println(section(table)));
    }

    static String section(ArchiveTable table) {
        return "### " + table.file() + "\n\n| column | holds | may be empty |\n|---|---|---|\n"
                + table.columns().stream().map(ArchivePages::line).collect(Collectors.joining())
                + "\nOnce only: " + table.keys().stream().map(ArchivePages::key).collect(Collectors.joining("; "))
                + ".\n";
    }

    private static String line(Column column) {
        return "| `" + column.name() + "` | " + holds(column) + " | " + mayBeEmpty(column) + " |\n";
    }

    private static String mayBeEmpty(Column column) {
        if (column.later()) {
            return "yes, or not there";
        }
        return column.presence() == Column.Presence.REQUIRED ? "no" : "yes";
    }

    private static String holds(Column column) {
        String type = column.type().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String limit = switch (column.limit()) {
            case NONE -> "";
            case ZERO_OR_MORE -> ", zero or more";
            case ABOVE_ZERO -> ", above zero";
        };
        if (column.type() == Type.TEXT) {
            return "text, up to " + column.size();
        }
        if (!column.references().isEmpty()) {
            return "id in `" + String.join(".csv` or `", column.references()) + ".csv`";
        }
        return column.words().isEmpty() ? type + limit : "word: " + String.join(", ", column.words());
    }

    private static String key(List<String> key) {
        return key.stream().map(name -> "`" + name + "`").collect(Collectors.joining(" with "));
    }
}
