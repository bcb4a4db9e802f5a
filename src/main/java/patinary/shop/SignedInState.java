package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Ends a sign-in for good after its longest time, however often it is used: 30 days on a device the owner marked as her
 * own, 12 hours elsewhere (NIST SP 800-63B allows 30 days for one factor).
 */
class SignedInState extends OncePerRequestFilter {

    static final String OWN_DEVICE = "patinary.own-device";
    static final Duration ON_OWN_DEVICE = Duration.ofDays(30);
    static final Duration ELSEWHERE = Duration.ofHours(12);

    private final Clock clock;

    SignedInState(Clock clock) {
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        HttpSession session = request.getSession(false);
        if (session != null && isOver(session)) {
            session.invalidate();
        }
        chain.doFilter(request, response);
    }

    private boolean isOver(HttpSession session) {
        boolean own = session.getAttribute(OWN_DEVICE) != null;
        return isOver(own, Instant.ofEpochMilli(session.getCreationTime()), clock.instant());
    }

    /** Whether a sign-in of that moment has come to its end. */
    static boolean isOver(boolean onOwnDevice, Instant since, Instant now) {
        return since.plus(onOwnDevice ? ON_OWN_DEVICE : ELSEWHERE).isBefore(now);
    }
}
