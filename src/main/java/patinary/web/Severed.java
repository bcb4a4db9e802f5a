package patinary.web;

import org.apache.catalina.connector.ClientAbortException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;

/** Tells a connection that broke off in the middle, as it does on a phone, from a failure of ours. */
final class Severed {

    private static final Logger LOG = LoggerFactory.getLogger(Severed.class);

    private Severed() {}

    /**
     * Whether whoever asked has gone away; then one quiet line says so in the log. Only what the server says of the
     * connection itself counts: an end of file may also be that of a damaged file in the shop.
     */
    static boolean is(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof ClientAbortException || cause instanceof AsyncRequestNotUsableException) {
                LOG.info("The connection broke off before the request or its answer was through");
                return true;
            }
        }
        return false;
    }
}
