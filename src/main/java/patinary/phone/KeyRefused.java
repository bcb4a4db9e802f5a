package patinary.phone;

/** An entry came without a key, or with one that is none. */
class KeyRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String messageKey;

    KeyRefused(String messageKey) {
        super(messageKey);
        this.messageKey = messageKey;
    }

    String messageKey() {
        return messageKey;
    }
}
