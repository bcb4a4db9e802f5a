package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Component;

/** Puts a person into the signed-in state of her device, proven at this moment; the state gets a new name each time. */
@Component
class Entrance {

    private final Clock clock;
    private final SecurityContextRepository contexts = new HttpSessionSecurityContextRepository();

    Entrance(Clock clock) {
        this.clock = clock;
    }

    /**
     * @param person as the security of the program knows her
     * @param rights what she may do; how she proved before is left out
     * @param factor how she proved now, a name of {@link FactorGrantedAuthority}
     */
    Authentication let(
            Object person,
            Collection<? extends GrantedAuthority> rights,
            String factor,
            HttpServletRequest request,
            HttpServletResponse response) {
        List<GrantedAuthority> all = new ArrayList<>();
        rights.stream().filter(one -> !(one instanceof FactorGrantedAuthority)).forEach(all::add);
        all.add(FactorGrantedAuthority.withAuthority(factor)
                .issuedAt(clock.instant())
                .build());
        Authentication who = UsernamePasswordAuthenticationToken.authenticated(person, null, all);
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(who);
        SecurityContextHolder.setContext(context);
        if (request.getSession(false) != null) {
            request.changeSessionId();
        }
        contexts.saveContext(context, request, response);
        return who;
    }
}
