package patinary.exchange;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking a person's text for a formula: text that starts with a risky sign gets a single quote
 * in front, and loses it again when it is read. Text that already starts with quotes and then a risky sign gets one
 * more, so that every text comes back as it was.
 *
 * <p>The signs are those of OWASP ASVS 5.0 requirement 1.2.10 and CWE-1236, with line ends and the full-width forms.
 */
final class SafeText {

    private static final String RISKY = "[=+\\-@\\t\\r\\n\\x00\\uFF1D\\uFF0B\\uFF0D\\uFF20]";
    private static final Pattern TO_GUARD = Pattern.compile("^'*" + RISKY);
    private static final Pattern GUARDED = Pattern.compile("^'+" + RISKY);

    private SafeText() {}

    static String guard(String text) {
        return TO_GUARD.matcher(text).find() ? "'" + text : text;
    }

    static String restore(String cell) {
        return GUARDED.matcher(cell).find() ? cell.substring(1) : cell;
    }
}
