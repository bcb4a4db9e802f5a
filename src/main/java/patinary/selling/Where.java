package patinary.selling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The conditions of a list's search: fixed texts joined by "and", with the values apart from them. */
final class Where {

    private final List<String> conditions = new ArrayList<>();
    private final Map<String, Object> values = new HashMap<>();

    Where and(String condition) {
        conditions.add(condition);
        return this;
    }

    Where and(String condition, String name, Object value) {
        conditions.add(condition);
        return with(name, value);
    }

    Where with(String name, Object value) {
        values.put(name, value);
        return this;
    }

    /** Adds a search by words: what was typed, anywhere, whatever its case. */
    Where words(String condition, String typed) {
        if (!typed.isBlank()) {
            String plain = typed.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("([!%_])", "!$1");
            and(condition, "words", "%" + plain + "%");
        }
        return this;
    }

    String sql() {
        return conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
    }

    /** The same with one condition more, which is not kept. */
    String sql(String more) {
        return conditions.isEmpty() ? " where " + more : sql() + " and " + more;
    }

    Map<String, Object> values() {
        return values;
    }
}
