package patinary.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows of the demo shop by table, each with its cells in the order of the archive's columns. */
public final class Rows {

    private final Map<String, List<List<String>>> tables = new LinkedHashMap<>();

    void add(String table, Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(cell instanceof Boolean yes ? yes ? "yes" : "no" : String.valueOf(cell));
        }
        tables.computeIfAbsent(table, t -> new ArrayList<>()).add(row);
    }

    public List<List<String>> of(String table) {
        return tables.getOrDefault(table, List.of());
    }

    public Map<String, List<List<String>>> all() {
        return tables;
    }
}
