package patinary.durable;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Set;

/** What a failure of the store means for whoever asked for something. */
public enum StoreFailure {

    /** Two changes were in each other's way, and this one was taken back: asked again, it may well go through. */
    BUSY,

    /** There is no room on the disk. */
    FULL,

    /** It was committed, and is not known to be on the disk. */
    UNSURE,

    /** The store cannot be reached or has closed itself. */
    GONE,

    /** Something else failed: no failure of the store. */
    NONE;

    /** Deadlock, serialization failure and a lock not got in time, as SQL and PostgreSQL 17 (appendix A) number them; and H2. */
    private static final Set<String> IN_EACH_OTHERS_WAY = Set.of("40001", "40P01", "55P03", "HYT00");

    /** PostgreSQL: disk full. */
    private static final String NO_ROOM = "53100";

    /** PostgreSQL: shut down by its administrator, after a crash, or starting; too many connections. */
    private static final Set<String> SERVER_GONE = Set.of("57P01", "57P02", "57P03", "53300");

    /** H2: closed, broken on writing or reading, in use by another program. */
    private static final Set<Integer> EMBEDDED_GONE = Set.of(90098, 90121, 90067, 90028, 90031, 90020);

    /** H2: concurrent update, lock not got in time. */
    private static final Set<Integer> EMBEDDED_BUSY = Set.of(90131, 50200);

    /** The connection pool, without a state of its own: the connection broke while a change was under way, and nothing could be taken back on it. */
    private static final String BROKEN_UNDER_WAY = "Connection is closed";

    /** Looks through a failure and all that caused it; a full disk says most, whatever closed in its wake. */
    public static StoreFailure of(Throwable failure) {
        StoreFailure worst = NONE;
        int depth = 0;
        for (Throwable cause = failure; cause != null && depth < 50; cause = cause.getCause(), depth++) {
            StoreFailure one = alone(cause);
            if (one == FULL) {
                return FULL;
            }
            if (worst == NONE || worst == GONE && one == UNSURE) {
                worst = one;
            }
        }
        return worst;
    }

    private static StoreFailure alone(Throwable cause) {
        if (cause instanceof NotForced) {
            return UNSURE;
        }
        if (cause instanceof IOException) {
            String words = String.valueOf(cause.getMessage());
            // As Linux, macOS and Windows say it.
            return words.contains("No space left") || words.contains("not enough space") ? FULL : NONE;
        }
        return cause instanceof SQLException sql ? ofSql(sql) : NONE;
    }

    private static StoreFailure ofSql(SQLException failure) {
        String state = String.valueOf(failure.getSQLState());
        if (state.equals(NO_ROOM)) {
            return FULL;
        }
        if (IN_EACH_OTHERS_WAY.contains(state) || EMBEDDED_BUSY.contains(failure.getErrorCode())) {
            return BUSY;
        }
        boolean gone = state.startsWith("08")
                || SERVER_GONE.contains(state)
                || EMBEDDED_GONE.contains(failure.getErrorCode())
                || failure instanceof SQLTransientConnectionException
                || BROKEN_UNDER_WAY.equals(failure.getMessage());
        return gone ? GONE : NONE;
    }
}
