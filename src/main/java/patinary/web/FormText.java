package patinary.web;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A form as text: each of its fields by the name that its control has on the page, with what stands in it. */
final class FormText {

    /** What a form carries for the program's sake; nobody typed it. */
    private static final List<String> CARRIED = List.of("id", "version", "pieceWords", "foundBy");

    private static final int DEEPEST = 5;

    private final Map<String, List<String>> answers = new LinkedHashMap<>();

    private FormText() {}

    /** Reads the public fields of a form, and of the forms within it. */
    static Map<String, List<String>> of(Object form) {
        FormText text = new FormText();
        text.fields("", form, 0);
        text.answers.keySet().removeAll(CARRIED);
        return text.answers;
    }

    private void fields(String before, Object form, int depth) {
        for (Field field : form.getClass().getFields()) {
            if (!Modifier.isStatic(field.getModifiers())) {
                value(before + field.getName(), read(field, form), depth);
            }
        }
    }

    private void value(String name, @Nullable Object value, int depth) {
        if (value == null || isPlain(value)) {
            answers.put(name, List.of(plain(value)));
        } else if (value instanceof Collection<?> several) {
            if (several.stream().allMatch(FormText::isPlain)) {
                answers.put(name, several.stream().map(FormText::plain).toList());
            } else {
                List<?> rows = new ArrayList<>(several);
                for (int i = 0; i < rows.size(); i++) {
                    value(name + "[" + i + "]", rows.get(i), depth + 1);
                }
            }
        } else if (value instanceof Map<?, ?> named) {
            named.forEach((key, one) -> value(name + "[" + key + "]", one, depth + 1));
        } else if (depth < DEEPEST) {
            fields(name + ".", value, depth + 1);
        }
    }

    private static boolean isPlain(@Nullable Object value) {
        return value == null
                || value instanceof CharSequence
                || value instanceof Number
                || value instanceof Boolean
                || value instanceof Enum<?>;
    }

    /** Lines of a text end differently in a browser and in the store. */
    private static String plain(@Nullable Object value) {
        return value == null ? "" : value.toString().replace("\r\n", "\n").strip();
    }

    private static @Nullable Object read(Field field, Object form) {
        try {
            // The class of a form is its feature's own; only its fields are public.
            field.setAccessible(true);
            return field.get(form);
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
