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
            append(text, letters);
        } else if (value instanceof BigDecimal number) {
            text.append(number.toPlainString());
        } else {
            text.append(value);
        }
    }

    /** Most texts hold nothing that would be taken for something else, and go over as they are. */
    private static void append(StringBuilder text, String letters) {
        int taken = 0;
        for (int i = 0; i < letters.length(); i++) {
            String instead = instead(letters.charAt(i));
            if (instead != null) {
                text.append(letters, taken, i).append(instead);
                taken = i + 1;
            }
        }
        text.append(letters, taken, letters.length());
    }

    private static @Nullable String instead(char letter) {
        return switch (letter) {
            case '\\' -> "\\\\";
            case '\t' -> "\\t";
            case '\n' -> "\\n";
            case '\r' -> "\\r";
            default -> null;
        };
    }
}
