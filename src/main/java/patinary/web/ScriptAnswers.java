package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.security.web.firewall.RequestRejectedException;

/** Tells requests of a script, which cannot use a page, from those of a person, and answers them outside controllers. */
public final class ScriptAnswers {

    /** Its presence marks an entry that a phone kept and sends later. */
    private static final String ENTRY = "Idempotency-Key";

    private static final String JSON = "application/json";

    private ScriptAnswers() {}

    /** Whether the request is an entry from a phone, or takes nothing but JSON. */
    public static boolean wanted(HttpServletRequest request) {
        try {
            String accept = request.getHeader("Accept");
            return isEntry(request) || accept != null && accept.startsWith(JSON) && !accept.contains("text/html");
        } catch (RequestRejectedException malformed) {
            // No script of ours writes such a header; the answer that was under way is drawn for a person.
            return false;
        }
    }

    /** Whether the request is an entry from a phone. */
    public static boolean isEntry(HttpServletRequest request) {
        return request.getHeader(ENTRY) != null;
    }

    /**
     * Answers a request that did not reach its controller.
     *
     * @param reason one word for the script: {@code sign-in}, {@code token} or {@code closed}
     */
    public static void refuse(HttpServletResponse response, int status, String reason) throws IOException {
        response.setStatus(status);
        response.setContentType(JSON);
        byte[] body =
                "{\"status\":%d,\"reason\":\"%s\"}".formatted(status, reason).getBytes(StandardCharsets.UTF_8);
        response.getOutputStream().write(body);
    }
}
