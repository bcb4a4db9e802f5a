package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.server.PathContainer;
import org.springframework.http.server.RequestPath;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.web.util.ServletRequestPathUtils;

/** Asks the table of {@link Reach} before every request. */
class DoorKeeper implements AuthorizationManager<RequestAuthorizationContext> {

    @Override
    public AuthorizationResult authorize(
            Supplier<? extends @Nullable Authentication> who, RequestAuthorizationContext door) {
        HttpServletRequest request = door.getRequest();
        return new AuthorizationDecision(Reach.isOpen(Visitor.of(who.get()), request.getMethod(), path(request)));
    }

    /** The path as the pages' own addresses are matched: %65 is an e, and nothing else hides one. */
    static PathContainer path(HttpServletRequest request) {
        if (ServletRequestPathUtils.hasParsedRequestPath(request)) {
            return ServletRequestPathUtils.getParsedRequestPath(request).pathWithinApplication();
        }
        RequestPath parsed = ServletRequestPathUtils.parseAndCache(request);
        ServletRequestPathUtils.clearParsedRequestPath(request);
        return parsed.pathWithinApplication();
    }
}
