package patinary.exchange;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** The values of one row, in the order of the table's columns; an empty cell that may be empty is null. */
record Row(ArchiveTable table, long line, List<@Nullable Object> values) {

    @Nullable
    Object get(String column) {
        return values.get(table.position(column));
    }

    boolean has(String column) {
        Object value = get(column);
        return value != null && !value.equals("");
    }

    String word(String column) {
        return String.valueOf(get(column));
    }

    boolean isYes(String column) {
        return Boolean.TRUE.equals(get(column));
    }

    LocalDate date(String column) {
        return (LocalDate) Objects.requireNonNull(get(column));
    }

    boolean isZero(String column) {
        Object value = get(column);
        return value == null
                || value instanceof Amount amount && amount.isZero()
                || value instanceof BigDecimal decimal && decimal.signum() == 0;
    }

    /** The given columns as one text, to find a row again. */
    String joined(List<String> columns) {
        return columns.stream().map(this::word).collect(Collectors.joining("\u0000"));
    }
}
