package patinary.history;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.UUID;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** In whose hand the program is: who is signed in, and whether a form, a phone's entry or a command came. */
@Component
class Hand {

    private static final String DONE = Hand.class.getName();

    /** The header of an entry that a phone kept; see docs/architecture.md. */
    private static final String PHONE = "Idempotency-Key";

    /** The name of who is signed in; empty for a command. */
    String who() {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        return who == null ? "" : who.getName();
    }

    CameBy cameBy() {
        return request()
                .map(request -> request.getHeader(PHONE) == null ? CameBy.FORM : CameBy.PHONE)
                .orElse(CameBy.COMMAND);
    }

    /** Takes note of what this request did, for the notice on the next page. */
    void did(UUID act) {
        request().ifPresent(request -> request.setAttribute(DONE, act));
    }

    /** What a request did. */
    static Optional<UUID> done(HttpServletRequest request) {
        return Optional.ofNullable((UUID) request.getAttribute(DONE));
    }

    private static Optional<HttpServletRequest> request() {
        return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes attributes
                ? Optional.of(attributes.getRequest())
                : Optional.empty();
    }
}
