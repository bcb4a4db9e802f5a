package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.web.firewall.RequestRejectedException;
import org.springframework.security.web.firewall.RequestRejectedHandler;
import org.springframework.stereotype.Component;

/**
 * Answers a request that is refused for its address, method or headers alone, as one with {@code ..} or a null in it. It came no
 * further than the first door, so the headers that protect a browser are put on here.
 */
@Component
class RefusedRequests implements RequestRejectedHandler {

    private static final Logger LOG = LoggerFactory.getLogger(RefusedRequests.class);

    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy", Doors.CONTENT_POLICY,
            "Permissions-Policy", Doors.DEVICE_POLICY,
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "no-referrer",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin",
            "Cache-Control", "no-store");

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, RequestRejectedException refusal)
            throws IOException {
        answer(request, response);
    }

    /** Says in the log from where it came, and to whoever sent it that it cannot be read. */
    static void answer(HttpServletRequest request, HttpServletResponse response) throws IOException {
        LOG.warn("Malformed request refused from {}", request.getRemoteAddr());
        HEADERS.forEach(response::setHeader);
        response.sendError(HttpServletResponse.SC_BAD_REQUEST);
    }
}
