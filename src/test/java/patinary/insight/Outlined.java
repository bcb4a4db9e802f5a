package patinary.insight;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An answer written out, field by field, with what it has many of put in order: two answers are alike where their outlines are. To look for each of
 * some thousand stays among all others, as a comparison without order does, takes minutes.
 */
final class Outlined {

    private final String leftOut;

    private Outlined(String leftOut) {
        this.leftOut = leftOut;
    }

    /** @param leftOut the field that is not written, of whatever has one of this name */
    static List<String> of(Object answer, String leftOut) {
        return new Outlined(leftOut).written(answer).lines().toList();
    }

    private String written(@Nullable Object value) {
        if (value instanceof BigDecimal number) {
            return number.stripTrailingZeros().toPlainString();
        }
        if (value instanceof Map<?, ?> map) {
            return sorted(map.entrySet().stream()
                    .map(entry -> written(entry.getKey()) + " = " + written(entry.getValue()))
                    .toList());
        }
        if (value instanceof Collection<?> many) {
            return sorted(many.stream().map(this::written).toList());
        }
        if (value instanceof double[] numbers) {
            return Arrays.toString(numbers);
        }
        return value == null || value instanceof Enum || !isOurs(value.getClass())
                ? String.valueOf(value)
                : fields(value);
    }

    private static boolean isOurs(Class<?> type) {
        return type.getName().startsWith("patinary.");
    }

    private static String sorted(List<String> many) {
        return many.stream().sorted().toList().toString();
    }

    private String fields(Object value) {
        List<String> said = new ArrayList<>();
        for (Field field : value.getClass().getDeclaredFields()) {
            if (!Modifier.isStatic(field.getModifiers()) && !field.getName().equals(leftOut)) {
                said.add(field.getName() + ": " + written(read(field, value)));
            }
        }
        return "\n" + value.getClass().getSimpleName() + said;
    }

    private static @Nullable Object read(Field field, Object value) {
        try {
            field.setAccessible(true);
            return field.get(value);
        } catch (IllegalAccessException closed) {
            throw new IllegalStateException(closed);
        }
    }
}
