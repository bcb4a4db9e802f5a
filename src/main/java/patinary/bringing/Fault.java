package patinary.bringing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a row cannot be brought in.
 *
 * @param row the row's number
 * @param line the line of the file on which it begins
 * @param column what the column says that is wrong, or null where it is the row as a whole
 * @param key the key of the message
 * @param arguments what fills its gaps
 */
record Fault(int row, long line, @Nullable Meaning column, String key, List<Object> arguments) {

    static Fault of(Sheet.Row row, @Nullable Meaning column, String key, Object... arguments) {
        return new Fault(row.number(), row.line(), column, "bringing.fault." + key, List.of(arguments));
    }
}
