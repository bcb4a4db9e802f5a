package patinary.exchange;

import java.util.ArrayList;
import java.util.List;

/** Gathers errors; beyond some thousand they are only counted, so that a wrong file cannot fill the memory. */
final class ErrorList {

    static final int KEPT = 2000;

    private final List<ArchiveError> errors = new ArrayList<>();
    private long more;

    void add(ArchiveError error) {
        if (errors.size() < KEPT) {
            errors.add(error);
        } else {
            more++;
        }
    }

    boolean isEmpty() {
        return errors.isEmpty();
    }

    void refuseIfAny() {
        if (!isEmpty()) {
            throw new ArchiveRefused(errors, more);
        }
    }
}
