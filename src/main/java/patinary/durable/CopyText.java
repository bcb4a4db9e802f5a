package patinary.durable;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Rows as PostgreSQL reads them from a stream: one a line, a tab between values, a backslash before what would be taken for either. */
final class CopyText {

    private static final String NOTHING = "\\N";

    private CopyText() {}

    static String of(List<@Nullable Object[]> rows) {
        StringBuilder text = new StringBuilder();
        for (@Nullable Object[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                if (i > 0) {
                    text.append('\t');
                }
                append(text, row[i]);
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static void append(StringBuilder text, @Nullable Object value) {
        if (value == null) {
            text.append(NOTHING);
        } else if (value instanceof String letters) {
            letters.chars().forEach(letter -> append(text, (char) letter));
        } else if (value instanceof BigDecimal number) {
            text.append(number.toPlainString());
        } else {
            text.append(value);
        }
    }

    private static void append(StringBuilder text, char letter) {
        switch (letter) {
            case '\\' -> text.append("\\\\");
            case '\t' -> text.append("\\t");
            case '\n' -> text.append("\\n");
            case '\r' -> text.append("\\r");
            default -> text.append(letter);
        }
    }
}
