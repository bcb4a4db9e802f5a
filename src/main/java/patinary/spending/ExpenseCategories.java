package patinary.spending;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import patinary.reference.ReferenceFile;
import patinary.web.Choice;

/**
 * What an expense can be for: a key that is stored and that tax tables map, and the name that people read. Data, in
 * {@code db/reference/expense-categories.csv}.
 */
public final class ExpenseCategories {

    private final Map<String, String> names;

    private ExpenseCategories(Map<String, String> names) {
        this.names = names;
    }

    /**
     * The categories that came with the program.
     *
     * @throws IllegalStateException where the file is not there
     */
    public static ExpenseCategories load() {
        Map<String, String> names = new LinkedHashMap<>();
        ReferenceFile.rows("expense-categories").forEach(row -> names.put(row.get("key"), row.get("name")));
        return new ExpenseCategories(names);
    }

    /** All categories in the order of the file. */
    public List<Choice> choices() {
        return names.entrySet().stream()
                .map(entry -> Choice.named(entry.getKey(), entry.getValue()))
                .toList();
    }

    public boolean has(String key) {
        return names.containsKey(key);
    }

    /** The name of a category, or the key itself where the file no longer has it. */
    public String name(String key) {
        return names.getOrDefault(key, key);
    }
}
