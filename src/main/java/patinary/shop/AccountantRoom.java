package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.UrlPathHelper;

/**
 * Keeps an accountant to the years: reading them and their files, and nothing else of the shop; the program's own guide
 * and handbook say nothing of it. Left out of a year are its seal and what is open in it, which are the owner's work and
 * name buyers. Stands before the doors, because some pages open to everybody show more to whoever is signed in. A link that
 * has ended lets nobody stay.
 */
class AccountantRoom extends OncePerRequestFilter {

    /** The link by which somebody came in. */
    static final String LINK = "patinary.accountant-link";

    static final String ROLE = "ROLE_" + Role.ACCOUNTANT.name();

    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final Pattern ROOM =
            Pattern.compile("/year(/.*)?|/help|/guide(/.*)?|/handbook(/.*)?|/(css|js|img)/.*|/manifest\\.webmanifest");
    private static final Pattern NOT_OF_A_YEAR = Pattern.compile("/year/[0-9]{4}/(seal|open)(/.*)?");

    private final AccountantLinks links;

    AccountantRoom(AccountantLinks links) {
        this.links = links;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        if (who != null && isAccountant(who)) {
            HttpSession session = request.getSession(false);
            if (session != null && session.getAttribute(LINK) instanceof UUID link && !links.use(link)) {
                session.invalidate();
                SecurityContextHolder.clearContext();
                throw new AccessDeniedException("The link has ended");
            }
            if (!isOpen(request)) {
                throw new AccessDeniedException("An accountant reads the years and nothing else");
            }
        }
        chain.doFilter(request, response);
    }

    private static boolean isAccountant(Authentication who) {
        return who.getAuthorities().stream().anyMatch(one -> ROLE.equals(one.getAuthority()));
    }

    private static boolean isOpen(HttpServletRequest request) {
        // As the pages' own paths are matched: without what is written in its place, as %65 for an e.
        String path = UrlPathHelper.defaultInstance.getPathWithinApplication(request);
        if (path.equals("/sign-out")) {
            return true;
        }
        return READING.contains(request.getMethod())
                && ROOM.matcher(path).matches()
                && !NOT_OF_A_YEAR.matcher(path).matches();
    }
}
