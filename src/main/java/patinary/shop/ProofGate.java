package patinary.shop;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.MediaType;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.UriComponentsBuilder;
import patinary.web.RestOfForm;
import patinary.web.ScriptAnswers;

/** Stands behind the doors and asks for fresh proof where {@link Proofs} says so. What was typed goes along and is not lost. */
class ProofGate extends OncePerRequestFilter {

    private static final Set<Visitor> ASKED = Set.of(Visitor.OWNER, Visitor.HELPER);

    private final Clock clock;

    ProofGate(Clock clock) {
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<Proofs.Row> row = Proofs.before(request.getMethod(), DoorKeeper.path(request));
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        if (row.isEmpty() || who == null || !ASKED.contains(Visitor.of(who)) || Proofs.isFresh(who, clock.instant())) {
            chain.doFilter(request, response);
        } else if (ScriptAnswers.wanted(request)) {
            ScriptAnswers.refuse(response, HttpServletResponse.SC_FORBIDDEN, "proof");
        } else if (request.getMethod().equals("POST") && isPlainForm(request)) {
            request.getRequestDispatcher(ProveController.HELD).forward(request, response);
        } else {
            RestOfForm.pass(request);
            response.setStatus(HttpServletResponse.SC_SEE_OTHER);
            response.setHeader("Location", asking(request, row.get()));
        }
    }

    /** A file cannot be put into a form for her: she chooses it again. */
    private static boolean isPlainForm(HttpServletRequest request) {
        String type = request.getContentType();
        return type == null || MediaType.APPLICATION_FORM_URLENCODED.isCompatibleWith(MediaType.parseMediaType(type));
    }

    private static String asking(HttpServletRequest request, Proofs.Row row) {
        boolean reading = !request.getMethod().equals("POST");
        String query = request.getQueryString();
        String back = reading ? request.getRequestURI() + (query == null ? "" : "?" + query) : row.page();
        return UriComponentsBuilder.fromPath(ProveController.PAGE)
                .queryParam("back", "{back}")
                .encode()
                .buildAndExpand(back)
                .toUriString();
    }
}
