package patinary.lists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import patinary.web.Ids;
import patinary.web.Words;

/** The conditions of a list's search: fixed texts joined by "and", with the values apart from them. */
public final class Where {

    private final List<String> conditions = new ArrayList<>();
    private final Map<String, Object> values = new HashMap<>();

    public Where and(String condition) {
        conditions.add(condition);
        return this;
    }

    public Where and(String condition, String name, Object value) {
        conditions.add(condition);
        return with(name, value);
    }

    public Where with(String name, Object value) {
        values.put(name, value);
        return this;
    }

    /** Asks for one thing by its id; a text that is no id asks for everything. */
    public Where id(String typed, String condition, String name) {
        Ids.read(typed).ifPresent(id -> and(condition, name, id));
        return this;
    }

    /**
     * Adds a search by words: what was typed, anywhere, whatever its case.
     *
     * @param condition with {@link Words#in} of where the words may stand
     */
    public Where words(String condition, String typed) {
        if (!typed.isBlank()) {
            and(condition, "words", Words.anywhere(typed));
        }
        return this;
    }

    public boolean isEmpty() {
        return conditions.isEmpty();
    }

    /** With a space before it; empty where everything is asked for. */
    public String sql() {
        return conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
    }

    /** The same with one condition more, which is not kept. */
    public String sql(String more) {
        return conditions.isEmpty() ? " where " + more : sql() + " and " + more;
    }

    public Map<String, Object> values() {
        return values;
    }
}
