package patinary.history;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.exchange.Content;
import patinary.exchange.KeptRows;

/**
 * What differs between two contents, row by row and cell by cell. Rows that are the same but for their number are the same row;
 * of the others, those with the same key are one row that changed.
 */
final class Differences {

    /** A cell that differs; a text without a letter is an empty cell. */
    record Cell(String column, String before, String after) {}

    /**
     * A row that came, went or changed.
     *
     * @param row all its cells, as they are now or were last
     * @param cells those that differ; all of a row that came or went
     */
    record RowChange(String table, Change.What what, Map<String, String> row, List<Cell> cells) {}

    /** Numbers that only put rows in order, and what nobody typed. */
    private static final Set<String> SILENT = Set.of("id", "line", "recorded_at", "alike_id");

    private Differences() {}

    /** In the order of the archive: the document first, then its lines. */
    static List<RowChange> between(@Nullable Content before, @Nullable Content after) {
        Set<String> tables = new LinkedHashSet<>();
        tables.addAll(before == null ? Set.of() : before.tables().keySet());
        tables.addAll(after == null ? Set.of() : after.tables().keySet());
        List<RowChange> all = new ArrayList<>();
        for (String table : tables) {
            all.addAll(rows(
                    table,
                    before == null ? List.of() : before.rows(table),
                    after == null ? List.of() : after.rows(table)));
        }
        return all;
    }

    private static List<RowChange> rows(
            String table, List<Map<String, String>> before, List<Map<String, String>> after) {
        List<Map<String, String>> gone = new ArrayList<>(before);
        List<Map<String, String>> come = new ArrayList<>();
        for (Map<String, String> row : after) {
            if (!removeSame(gone, row)) {
                come.add(row);
            }
        }
        List<RowChange> changes = new ArrayList<>();
        Map<String, Map<String, String>> byKey = new HashMap<>();
        gone.forEach(row -> byKey.putIfAbsent(key(table, row), row));
        Set<Map<String, String>> paired = new HashSet<>();
        for (Map<String, String> row : come) {
            Map<String, String> was = byKey.remove(key(table, row));
            if (was != null) {
                paired.add(was);
            }
            changes.add(change(table, was, row));
        }
        gone.stream().filter(row -> !paired.contains(row)).forEach(row -> changes.add(change(table, row, null)));
        return changes;
    }

    private static boolean removeSame(List<Map<String, String>> rows, Map<String, String> row) {
        for (int i = 0; i < rows.size(); i++) {
            if (spoken(rows.get(i)).equals(spoken(row))) {
                rows.remove(i);
                return true;
            }
        }
        return false;
    }

    private static RowChange change(
            String table, @Nullable Map<String, String> before, @Nullable Map<String, String> after) {
        Map<String, String> was = before == null ? Map.of() : spoken(before);
        Map<String, String> is = after == null ? Map.of() : spoken(after);
        Set<String> columns = new LinkedHashSet<>(KeptRows.columns(table));
        columns.addAll(was.keySet());
        columns.addAll(is.keySet());
        List<Cell> cells = columns.stream()
                .map(column -> new Cell(column, was.getOrDefault(column, ""), is.getOrDefault(column, "")))
                .filter(cell -> !cell.before().equals(cell.after()))
                .toList();
        Change.What what =
                before == null ? Change.What.RECORDED : after == null ? Change.What.REMOVED : Change.What.CHANGED;
        return new RowChange(table, what, after == null ? was : is, cells);
    }

    private static Map<String, String> spoken(Map<String, String> row) {
        Map<String, String> spoken = new LinkedHashMap<>(row);
        spoken.keySet().removeAll(SILENT);
        return spoken;
    }

    private static String key(String table, Map<String, String> row) {
        return KeptRows.key(table).stream()
                .map(column -> row.getOrDefault(column, ""))
                .collect(Collectors.joining("\u0000"));
    }
}
