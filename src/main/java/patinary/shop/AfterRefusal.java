package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.stereotype.Component;

/** After a refused sign-in, which is counted already: notes it in the log, and shows the page again with the name kept. */
@Component
class AfterRefusal implements AuthenticationFailureHandler {

    static final String NAME = "patinary.sign-in.name";
    private static final Logger LOG = LoggerFactory.getLogger(AfterRefusal.class);

    @Override
    public void onAuthenticationFailure(
            HttpServletRequest request, HttpServletResponse response, AuthenticationException reason)
            throws IOException {
        String name = nameOf(request);
        LOG.warn(
                "Sign-in refused from {} for a name of {} letters: {}",
                request.getRemoteAddr(),
                name.length(),
                reason.getClass().getSimpleName());
        request.getSession().setAttribute(NAME, name);
        response.setStatus(HttpServletResponse.SC_SEE_OTHER);
        response.setHeader("Location", "/sign-in?failed");
    }

    static String nameOf(HttpServletRequest request) {
        String name = request.getParameter("name");
        String stripped = name == null ? "" : name.strip();
        return stripped.substring(0, Math.min(stripped.length(), Answers.NAME));
    }
}
