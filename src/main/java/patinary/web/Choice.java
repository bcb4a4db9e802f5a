package patinary.web;

/**
 * One of several answers offered by a select or by radio buttons.
 *
 * @param value what is sent
 * @param text what is read: the text itself, or the key of a message
 * @param message whether {@code text} is the key of a message
 */
public record Choice(String value, String text, boolean message) {

    /** An answer whose text is data, for instance the name of a source. */
    public static Choice named(String value, String text) {
        return new Choice(value, text, false);
    }

    /** An answer whose text stands in the message files. */
    public static Choice said(String value, String key) {
        return new Choice(value, key, true);
    }
}
