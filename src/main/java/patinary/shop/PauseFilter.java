package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.authentication.LockedException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Answers a sign-in during a pause as any other refusal, without looking at the password. */
class PauseFilter extends OncePerRequestFilter {

    private final Pauses pauses;
    private final AfterRefusal refusal;

    PauseFilter(Pauses pauses, AfterRefusal refusal) {
        this.pauses = pauses;
        this.refusal = refusal;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean signingIn =
                request.getMethod().equals("POST") && request.getRequestURI().equals("/sign-in");
        if (signingIn && !pauses.mayTry(AfterRefusal.nameOf(request), request.getRemoteAddr())) {
            refusal.onAuthenticationFailure(request, response, new LockedException("pause"));
            return;
        }
        chain.doFilter(request, response);
    }
}
