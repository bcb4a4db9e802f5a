package patinary.exchange;

import java.util.List;

/** An archive could not be taken in; nothing was stored. */
public class ArchiveRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<ArchiveError> errors;
    private final long more;

    ArchiveRefused(List<ArchiveError> errors, long more) {
        super("Refused for " + (errors.size() + more) + " errors");
        this.errors = List.copyOf(errors);
        this.more = more;
    }

    ArchiveRefused(ArchiveError error) {
        this(List.of(error), 0);
    }

    public List<ArchiveError> errors() {
        return errors;
    }

    /** How many errors there are beyond those listed. */
    public long more() {
        return more;
    }
}
