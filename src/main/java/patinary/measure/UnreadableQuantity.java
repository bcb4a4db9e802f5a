package patinary.measure;

import java.util.List;

/** Text that does not read as exactly one quantity; the reason is a message key with arguments for a page. */
public final class UnreadableQuantity extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String messageKey;

    private final String argument;

    UnreadableQuantity(String messageKey, String argument) {
        super(messageKey + ": " + argument);
        this.messageKey = messageKey;
        this.argument = argument;
    }

    /**
     * {@code measure.error.missing}, {@code .number} (no number that can be read), {@code .ambiguous} (1,234),
     * {@code .zeroDenominator}, {@code .unit} (an unknown unit), {@code .unitMissing} (a cut without a unit at its end) or
     * {@code .cut} (a cut whose sides are not lengths).
     */
    public String messageKey() {
        return messageKey;
    }

    /** {@code {0}}: the part of the text that could not be read. */
    public List<String> arguments() {
        return List.of(argument);
    }
}
