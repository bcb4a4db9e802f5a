package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses a request whose form or languages the server cannot read: broken parts, too many fields, signs that are none. Whoever
 * asks first for a field meets that, and that may be any filter; so all of them stand inside this one.
 */
@Component
@Order(MalformedRequests.FIRST)
class MalformedRequests extends OncePerRequestFilter {

    static final int FIRST = Ordered.HIGHEST_PRECEDENCE + 10;

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (!readsLanguages(request)) {
            RefusedRequests.answer(request, response);
            return;
        }
        try {
            chain.doFilter(request, response);
        } catch (InvalidParameterException unreadable) {
            RefusedRequests.answer(request, response);
        }
    }

    /** The server refuses a very long list once; it is not asked for again while the refusal is drawn. */
    private static boolean readsLanguages(HttpServletRequest request) {
        try {
            request.getLocale();
            return true;
        } catch (IllegalArgumentException tooMany) {
            return false;
        }
    }
}
