package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import patinary.web.ScriptAnswers;

/**
 * Tells a phone that nobody is signed in on that its entry waits for a sign-in, before it is given a session for the sake of a token: the
 * cookie of that one would take the place of the sign-in's that may be under way on the same phone, and with it the page that she wanted
 * to come back to.
 */
final class EntryOfNobody extends OncePerRequestFilter {

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (ScriptAnswers.isEntry(request)
                && request.getSession(false) == null
                && SecurityContextHolder.getContext().getAuthentication() == null) {
            ScriptAnswers.refuse(response, HttpServletResponse.SC_UNAUTHORIZED, "sign-in");
        } else {
            chain.doFilter(request, response);
        }
    }
}
