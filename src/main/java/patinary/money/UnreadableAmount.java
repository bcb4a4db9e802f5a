package patinary.money;

import java.util.List;

/**
 * Text that does not read as exactly one amount. The reason is a message key with arguments, for a page to show beside
 * the field; the exception's own text is for logs.
 */
public final class UnreadableAmount extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String messageKey;

    private final int digits;

    private UnreadableAmount(String messageKey, String text, int digits) {
        super(messageKey + ": " + text);
        this.messageKey = messageKey;
        this.digits = digits;
    }

    /** No text at all. */
    static UnreadableAmount missing(int digits) {
        return new UnreadableAmount("money.error.missing", "", digits);
    }

    /** Letters, another currency's symbol, or marks in places where no amount has them. */
    static UnreadableAmount unreadable(String text, int digits) {
        return new UnreadableAmount("money.error.unreadable", text, digits);
    }

    /** One mark and three digits: thousands to one reader, decimals to another. */
    static UnreadableAmount ambiguous(String text, int digits) {
        return new UnreadableAmount("money.error.ambiguous", text, digits);
    }

    /** More decimals than the currency has. */
    static UnreadableAmount tooManyDecimals(String text, int digits) {
        return new UnreadableAmount("money.error.tooManyDecimals", text, digits);
    }

    /** More minor units than a 64-bit number holds. */
    static UnreadableAmount tooLarge(String text, int digits) {
        return new UnreadableAmount("money.error.tooLarge", text, digits);
    }

    /**
     * The reason: {@code money.error.missing}, {@code .unreadable}, {@code .ambiguous}, {@code .tooManyDecimals} or
     * {@code .tooLarge}.
     */
    public String messageKey() {
        return messageKey;
    }

    /** The message's one argument {@code {0}}: how many decimals the currency has. */
    public List<Object> arguments() {
        return List.of(digits);
    }
}
