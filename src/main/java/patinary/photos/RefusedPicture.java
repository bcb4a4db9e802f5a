package patinary.photos;

import java.util.List;

/** A file is no picture that could be taken in. */
final class RefusedPicture extends Exception {

    private static final long serialVersionUID = 1L;

    private final String messageKey;
    private final transient List<Object> details;

    RefusedPicture(String messageKey, Object... details) {
        super(messageKey);
        this.messageKey = messageKey;
        this.details = List.of(details);
    }

    /** The key of a message that says what is wrong and what to do. */
    String messageKey() {
        return messageKey;
    }

    Object[] details() {
        return details.toArray();
    }
}
