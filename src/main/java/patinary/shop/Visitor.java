package patinary.shop;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/** Who stands at a door: nobody known, or a person of a {@link Role}. */
enum Visitor {
    STRANGER,
    ACCOUNTANT,
    HELPER,
    OWNER;

    private static final String ROLE = "ROLE_";

    /** Whoever sent the request that is being answered. */
    static Visitor now() {
        return of(SecurityContextHolder.getContext().getAuthentication());
    }

    /** Somebody without a known role is a stranger, however she came in. */
    static Visitor of(@Nullable Authentication who) {
        if (who == null || !who.isAuthenticated()) {
            return STRANGER;
        }
        Visitor visitor = STRANGER;
        for (Role role : Role.values()) {
            String authority = ROLE + role.name();
            if (who.getAuthorities().stream().anyMatch(one -> authority.equals(one.getAuthority()))) {
                visitor = valueOf(role.name());
                break;
            }
        }
        return visitor;
    }
}
