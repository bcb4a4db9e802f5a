package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.UUID;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Ends the stay of an accountant whose link has ended, at her next request. Where she may go is in {@link Reach}: reading the
 * years and their files, and nothing else of the shop; the program's own guide and handbook say nothing of it. Left out of a
 * year are its seal and what is open in it, which are the owner's work and name buyers.
 */
class AccountantRoom extends OncePerRequestFilter {

    /** The link by which somebody came in. */
    static final String LINK = "patinary.accountant-link";

    static final String ROLE = "ROLE_" + Role.ACCOUNTANT.name();

    private final AccountantLinks links;

    AccountantRoom(AccountantLinks links) {
        this.links = links;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (Visitor.now() == Visitor.ACCOUNTANT) {
            HttpSession session = request.getSession(false);
            if (session != null && session.getAttribute(LINK) instanceof UUID link && !links.use(link)) {
                session.invalidate();
                SecurityContextHolder.clearContext();
                throw new AccessDeniedException("The link has ended");
            }
        }
        chain.doFilter(request, response);
    }
}
