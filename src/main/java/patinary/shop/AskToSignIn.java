package patinary.shop;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import patinary.web.ScriptAnswers;

/** Leads a person to the sign-in page. A script could not use that page: it is told the status instead. */
class AskToSignIn implements AuthenticationEntryPoint {

    private final AuthenticationEntryPoint page = new LoginUrlAuthenticationEntryPoint("/sign-in");

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException reason)
            throws IOException, ServletException {
        if (ScriptAnswers.wanted(request)) {
            ScriptAnswers.refuse(response, HttpServletResponse.SC_UNAUTHORIZED, "sign-in");
            return;
        }
        page.commence(request, response, reason);
    }
}
