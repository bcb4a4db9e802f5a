package patinary.taxyear;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines of one form in one year, and which account and category goes to which meaning.
 *
 * @param name the table's key
 * @param lines in the order of the form
 * @param map from account and category to meaning, keyed as {@link #key} says
 */
public record TaxTable(String name, List<TaxLine> lines, Map<String, String> map) {

    public static String key(String account, String category) {
        return account + "|" + category;
    }

    /** The meaning of a category, or else of its whole account; empty where the table maps neither. */
    public Optional<String> meaning(String account, String category) {
        return Optional.ofNullable(map.get(key(account, category)))
                .or(() -> Optional.ofNullable(map.get(key(account, ""))));
    }

    public Optional<TaxLine> line(String meaning) {
        return lines.stream().filter(line -> line.meaning().equals(meaning)).findFirst();
    }
}
