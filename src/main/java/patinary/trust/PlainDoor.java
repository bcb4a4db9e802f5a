package patinary.trust;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.core.Ordered;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;
import patinary.web.Host;

/** Where it is told to, leads whoever comes unencrypted from another machine to the page that leads to trust. */
final class PlainDoor extends OncePerRequestFilter implements Ordered {

    /** Before the signed-in state is looked up: a cookie that came in the clear is not even read. */
    private static final int FIRST = HIGHEST_PRECEDENCE + 20;

    private static final List<String> FREE = List.of("/trust", "/css/", "/js/", "/img/", "/actuator/health");

    private final boolean closed;

    PlainDoor(boolean closed) {
        this.closed = closed;
    }

    @Override
    public int getOrder() {
        return FIRST;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !closed || !Host.isPlain(request) || FREE.stream().anyMatch(request.getRequestURI()::startsWith);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        response.setHeader(HttpHeaders.LOCATION, "/trust");
        response.setStatus(HttpServletResponse.SC_SEE_OTHER);
    }
}
