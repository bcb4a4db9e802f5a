package patinary.trust;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import patinary.web.Host;

/** What the notice on phone pages asks while it is drawn. */
@Component("way")
class Way {

    /** The pages that are made to be used without reception, on the phone. */
    private static final Set<String> PHONE = Set.of("/buy", "/stall", "/bench/now", "/count", "/waiting");

    /** Whether the page came unencrypted from another machine. */
    public boolean isPlain() {
        return Host.isPlain(request());
    }

    public boolean isPhonePage() {
        return PHONE.contains(request().getRequestURI());
    }

    private static HttpServletRequest request() {
        return ((ServletRequestAttributes) RequestContextHolder.currentRequestAttributes()).getRequest();
    }
}
