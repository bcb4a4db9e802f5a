package patinary.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a document, or something else, is made of: the rows that the shop archive would write for it, as texts by the names of
 * their columns. Empty cells are left out, and so is the id by which its lines name it.
 *
 * @param tables the rows by table, in the order of the archive; a table without rows is left out
 */
public record Content(Map<String, List<Map<String, String>>> tables) {

    private static final JsonMapper JSON = new JsonMapper();
    private static final TypeReference<LinkedHashMap<String, List<Map<String, String>>>> SHAPE =
            new TypeReference<>() {};

    /** Changes a cell's text; what becomes empty is left out. */
    @FunctionalInterface
    public interface CellChange {

        String of(String table, String column, String text);
    }

    /** Reads what {@link #text} wrote. */
    public static Content of(String text) {
        return new Content(JSON.readValue(text, SHAPE));
    }

    /** As JSON (RFC 8259): an object of tables, each a list of rows, each an object of cells. */
    public String text() {
        return JSON.writeValueAsString(tables);
    }

    /** The rows of one of its tables; none where it has none. */
    public List<Map<String, String>> rows(String table) {
        return tables.getOrDefault(table, List.of());
    }

    /** A cell of the first row of a table; without a letter where it is empty. */
    public String cell(String table, String column) {
        return rows(table).stream()
                .findFirst()
                .map(row -> row.getOrDefault(column, ""))
                .orElse("");
    }

    /** The same with other texts in its cells. */
    public Content with(CellChange change) {
        Map<String, List<Map<String, String>>> changed = new LinkedHashMap<>();
        tables.forEach((table, rows) -> changed.put(table, each(rows, row -> with(table, row, change))));
        return new Content(changed);
    }

    private static Map<String, String> with(String table, Map<String, String> row, CellChange change) {
        Map<String, String> changed = new LinkedHashMap<>();
        row.forEach((column, text) -> {
            String now = change.of(table, column, text);
            if (!now.isEmpty()) {
                changed.put(column, now);
            }
        });
        return changed;
    }

    private static <T> List<T> each(List<T> rows, UnaryOperator<T> change) {
        List<T> changed = new ArrayList<>();
        rows.forEach(row -> changed.add(change.apply(row)));
        return changed;
    }
}
