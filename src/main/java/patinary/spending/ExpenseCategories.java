package patinary.spending;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import patinary.reference.ReferenceFile;
import patinary.web.Choice;
import patinary.web.Worded;

/**
 * What an expense can be for: a key that is stored and that tax tables map, and the name that people read. Data, in
 * {@code db/reference/expense-categories.csv}.
 */
public final class ExpenseCategories {

    private final Map<String, CSVRecord> rows;

    private ExpenseCategories(Map<String, CSVRecord> rows) {
        this.rows = rows;
    }

    /**
     * The categories that came with the program.
     *
     * @throws IllegalStateException where the file is not there
     */
    public static ExpenseCategories load() {
        Map<String, CSVRecord> rows = new LinkedHashMap<>();
        ReferenceFile.rows("expense-categories").forEach(row -> rows.put(row.get("key"), row));
        return new ExpenseCategories(rows);
    }

    /** All categories in the order of the file. */
    public List<Choice> choices() {
        return rows.keySet().stream().map(key -> Choice.named(key, name(key))).toList();
    }

    public boolean has(String key) {
        return rows.containsKey(key);
    }

    /** The name of a category in the language of the page, or the key itself where the file no longer has it. */
    public String name(String key) {
        CSVRecord row = rows.get(key);
        return row == null ? key : Worded.of(row::get, "name").here();
    }
}
