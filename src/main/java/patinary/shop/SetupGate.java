package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Until the shop is set up every way leads to the setup page. Stands after the request's context, before security. */
@Component
@Order(SetupGate.BEFORE_SECURITY)
class SetupGate extends OncePerRequestFilter {

    static final int BEFORE_SECURITY = -102;
    private static final List<String> FREE = List.of(
            "/setup", "/css/", "/js/", "/img/", "/error", "/actuator/health", "/trust", "/manifest.webmanifest");

    private final CurrentShop shop;

    SetupGate(CurrentShop shop) {
        this.shop = shop;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI();
        return FREE.stream().anyMatch(path::startsWith);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (shop.isOpen()) {
            chain.doFilter(request, response);
            return;
        }
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        response.setHeader(HttpHeaders.LOCATION, "/setup");
        response.setStatus(HttpServletResponse.SC_SEE_OTHER);
    }
}
