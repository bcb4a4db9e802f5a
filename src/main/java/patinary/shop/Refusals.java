package patinary.shop;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import patinary.web.ScriptAnswers;

/** Tells a form that was open too long from a door that is closed to this person. */
class Refusals implements AccessDeniedHandler {

    private static final Logger LOG = LoggerFactory.getLogger(Refusals.class);

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
            throws IOException, ServletException {
        LOG.warn(
                "Refused to {} from {}: {} {}, {}",
                request.getRemoteUser(),
                request.getRemoteAddr(),
                request.getMethod(),
                request.getRequestURI(),
                refusal.getClass().getSimpleName());
        boolean tooOld = refusal instanceof CsrfException;
        if (ScriptAnswers.wanted(request)) {
            answer(response, tooOld);
            return;
        }
        request.getRequestDispatcher(tooOld ? "/refused/too-old" : "/refused").forward(request, response);
    }

    /** The guard against forged forms stands before the doors: it also meets whoever is not signed in any more. */
    private static void answer(HttpServletResponse response, boolean tooOld) throws IOException {
        if (SecurityContextHolder.getContext().getAuthentication() == null) {
            ScriptAnswers.refuse(response, HttpServletResponse.SC_UNAUTHORIZED, "sign-in");
        } else {
            ScriptAnswers.refuse(response, HttpServletResponse.SC_FORBIDDEN, tooOld ? "token" : "closed");
        }
    }
}
