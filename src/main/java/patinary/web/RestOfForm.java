package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.OutputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What is left of a large form that was answered early. A browser looks at no answer before it has sent everything, and the server
 * cuts a connection on which much is still to come: then a person would see that instead of the reason.
 */
public final class RestOfForm {

    private static final Logger LOG = LoggerFactory.getLogger(RestOfForm.class);

    private RestOfForm() {}

    /** Lets the rest come in and keeps nothing of it. Only for somebody who is known: it holds a connection as long as it takes. */
    public static void pass(HttpServletRequest request) {
        try {
            request.getInputStream().transferTo(OutputStream.nullOutputStream());
        } catch (IOException gone) {
            LOG.debug("Whoever sent it has gone away", gone);
        }
    }
}
