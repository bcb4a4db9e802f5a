package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.List;
import java.util.Optional;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import patinary.web.NotFound;

/** Lets an accountant in by a link. Guessing is slowed down as at the sign-in, and a wrong link is a page that is not there. */
@Controller
class AccountantDoor {

    private final AccountantLinks links;
    private final Pauses pauses;
    private final SecurityContextRepository contexts = new HttpSessionSecurityContextRepository();

    AccountantDoor(AccountantLinks links, Pauses pauses) {
        this.links = links;
        this.pauses = pauses;
    }

    @GetMapping("/for-the-accountant/{secret}")
    String enter(@PathVariable String secret, HttpServletRequest request, HttpServletResponse response) {
        if (!pauses.mayTry(from(request), from(request))) {
            throw new NotFound("a link for the accountant, during a pause");
        }
        Optional<AccountantLinks.Link> link = links.opened(secret);
        if (link.isEmpty()) {
            throw new NotFound("a link for the accountant");
        }
        pauses.succeeded(from(request), from(request));
        comeIn(link.get(), request, response);
        return "redirect:/year";
    }

    /** Counted apart from the sign-in: an old link that is tried again keeps nobody of that address out. */
    private static String from(HttpServletRequest request) {
        return "link " + request.getRemoteAddr();
    }

    /** A new signed-in state, so that none that was there before goes on with other rights. */
    private void comeIn(AccountantLinks.Link link, HttpServletRequest request, HttpServletResponse response) {
        HttpSession before = request.getSession(false);
        if (before != null) {
            before.invalidate();
        }
        request.getSession(true).setAttribute(AccountantRoom.LINK, link.id());
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                link.forWhom(), null, List.of(new SimpleGrantedAuthority(AccountantRoom.ROLE))));
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
        links.use(link.id());
    }
}
