package patinary.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What somebody else has saved meanwhile, where it differs from what is typed: the fields of a form ask it, to show both side
 * by side.
 */
public final class Theirs {

    private final Map<String, List<String>> differing = new LinkedHashMap<>();

    private Theirs() {}

    /** @param mine what is typed, and {@code saved} what is stored now, as {@link FormText} gives them */
    static Theirs between(Map<String, List<String>> mine, Map<String, List<String>> saved) {
        Theirs theirs = new Theirs();
        saved.forEach((name, values) -> {
            if (!known(values).equals(known(mine.getOrDefault(name, List.of())))) {
                theirs.differing.put(name, values);
            }
        });
        mine.forEach((name, values) -> {
            if (!saved.containsKey(name) && !known(values).isEmpty()) {
                theirs.differing.put(name, List.of(""));
            }
        });
        return theirs;
    }

    public boolean differs(String field) {
        return differing.containsKey(field);
    }

    public boolean none() {
        return differing.isEmpty();
    }

    public int count() {
        return differing.size();
    }

    /** The names of the fields that differ, in the order of the form. */
    public List<String> fields() {
        return List.copyOf(differing.keySet());
    }

    /** What stands saved in a field; several where several can be chosen. */
    public List<String> values(String field) {
        return differing.getOrDefault(field, List.of());
    }

    /** How one saved answer is called in the list it was chosen from, or nothing where there is no such list. */
    public @Nullable Choice choice(String value, @Nullable Object choices) {
        if (choices instanceof List<?> list) {
            for (Object one : list) {
                if (one instanceof Choice choice && choice.value().equals(value)) {
                    return choice;
                }
            }
        }
        return null;
    }

    /** What is not known and what is not there are the same; so is a box that is not ticked. */
    private static List<String> known(List<String> values) {
        return values.stream()
                .filter(value -> !value.isBlank() && !value.equals("false"))
                .toList();
    }
}
