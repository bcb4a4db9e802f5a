package patinary.trust;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import patinary.web.Host;
import patinary.web.PhonePages;

/** What the notice on phone pages asks while it is drawn. */
@Component("way")
class Way {

    /** Whether the page came unencrypted from another machine. */
    public boolean isPlain() {
        return Host.isPlain(request());
    }

    public boolean isPhonePage() {
        return PhonePages.ALL.contains(request().getRequestURI());
    }

    private static HttpServletRequest request() {
        return ((ServletRequestAttributes) RequestContextHolder.currentRequestAttributes()).getRequest();
    }
}
