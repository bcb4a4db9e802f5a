package patinary.durable;

import org.springframework.dao.DataAccessResourceFailureException;

/** A change was committed, and is not known to be on the disk: it must not be answered as stored. */
public final class NotForced extends DataAccessResourceFailureException {

    private static final long serialVersionUID = 1L;

    NotForced(String what, Throwable cause) {
        super(what, cause);
    }
}
