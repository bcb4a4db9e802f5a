package patinary.history;

/** Why an act cannot be taken back; nothing was changed. */
class CannotUndo extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Each is the last word of a message. */
    enum Reason {
        CHANGED_SINCE,
        SEALED,
        SEAL,
        NAMED,
        UNREADABLE;

        String messageKey() {
            return "history.error." + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    private final Reason reason;

    CannotUndo(Reason reason) {
        super(reason.name());
        this.reason = reason;
    }

    CannotUndo(Reason reason, Throwable cause) {
        super(reason.name(), cause);
        this.reason = reason;
    }

    Reason reason() {
        return reason;
    }
}
