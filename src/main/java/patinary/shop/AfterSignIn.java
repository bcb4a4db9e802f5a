package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.savedrequest.RequestCache;
import org.springframework.security.web.savedrequest.SavedRequest;
import org.springframework.stereotype.Component;

/** After a sign-in: decides how long it holds and leads to the page that was asked for. */
@Component
class AfterSignIn implements AuthenticationSuccessHandler {

    /** Where the setup page wanted to go on. */
    static final String NEXT = "patinary.setup.next";

    private static final Logger LOG = LoggerFactory.getLogger(AfterSignIn.class);

    private final Pauses pauses;
    private final RequestCache asked;

    AfterSignIn(Pauses pauses, RequestCache asked) {
        this.pauses = pauses;
        this.asked = asked;
    }

    @Override
    public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response, Authentication who)
            throws IOException {
        String target = arrive(request, response, who);
        response.setStatus(HttpServletResponse.SC_SEE_OTHER);
        response.setHeader("Location", target);
    }

    /**
     * Makes the state of somebody who has just come in what her device needs.
     *
     * @return where she goes on
     */
    String arrive(HttpServletRequest request, HttpServletResponse response, Authentication who) {
        pauses.succeeded(AfterRefusal.nameOf(request), request.getRemoteAddr());
        HttpSession session = request.getSession();
        session.setAttribute(
                Devices.KIND, DeviceKind.of(request.getHeader("User-Agent")).name());
        if (request.getParameter("ownDevice") != null) {
            session.setAttribute(SignedInState.OWN_DEVICE, true);
            session.setMaxInactiveInterval((int) SignedInState.ON_OWN_DEVICE.toSeconds());
            request.setAttribute(SignedInState.OWN_DEVICE, true);
        }
        LOG.info("Signed in: {} from {}", who.getName(), request.getRemoteAddr());
        return target(request, response, session);
    }

    private String target(HttpServletRequest request, HttpServletResponse response, HttpSession session) {
        SavedRequest saved = asked.getRequest(request, response);
        asked.removeRequest(request, response);
        if (session.getAttribute(NEXT) instanceof String next) {
            session.removeAttribute(NEXT);
            return next;
        }
        return saved == null ? "/" : saved.getRedirectUrl();
    }
}
