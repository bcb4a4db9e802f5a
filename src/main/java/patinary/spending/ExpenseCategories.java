package patinary.spending;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import patinary.web.Choice;

/**
 * What an expense can be for: a key that is stored and that tax tables map, and the name that people read. Data, in
 * {@code db/reference/expense-categories.csv}.
 */
public final class ExpenseCategories {

    private static final String RESOURCE = "/db/reference/expense-categories.csv";

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

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
        try (InputStream in = ExpenseCategories.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + RESOURCE);
            }
            return read(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static ExpenseCategories read(Reader csv) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        try (CSVParser parser = CSVParser.parse(csv, FORMAT)) {
            parser.forEach(row -> names.put(row.get("key"), row.get("name")));
        }
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
