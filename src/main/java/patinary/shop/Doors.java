package patinary.shop;

import static org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy.NO_REFERRER;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.authentication.logout.HeaderWriterLogoutHandler;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter.Directive;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.savedrequest.HttpSessionRequestCache;
import org.springframework.security.web.savedrequest.RequestCache;
import patinary.web.Host;
import patinary.web.ScriptAnswers;

/** The doors: how somebody comes in, and that {@link Reach} is asked before every request. */
@Configuration(proxyBeanMethods = false)
class Doors {

    static final String CONTENT_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' blob:; connect-src 'self'; form-action 'self'; manifest-src 'self'; worker-src 'self'; "
            + "base-uri 'none'; object-src 'none'; frame-ancestors 'none'";
    static final String DEVICE_POLICY = "camera=(self), geolocation=(), microphone=(), payment=(), usb=()";

    @Bean
    PasswordEncoder passwordEncoder() {
        return new KeptPasswords();
    }

    /** Keeps the address that a person asked for before the sign-in, and leaves it as it was. */
    @Bean
    RequestCache asked() {
        HttpSessionRequestCache asked = new HttpSessionRequestCache();
        asked.setMatchingRequestParameterName(null);
        asked.setRequestMatcher(request -> !ScriptAnswers.wanted(request));
        return asked;
    }

    @Bean
    SecurityFilterChain guard(
            HttpSecurity http,
            AfterSignIn signedIn,
            AfterRefusal refused,
            Pauses pauses,
            AccountantLinks links,
            Clock clock,
            @Value("${patinary.https:false}") boolean publiclyVouchedFor) {
        http.authorizeHttpRequests(doors -> doors.dispatcherTypeMatchers(DispatcherType.FORWARD, DispatcherType.ERROR)
                .permitAll()
                .anyRequest()
                .access(new DoorKeeper()));
        http.formLogin(form -> form.loginPage("/sign-in")
                .usernameParameter("name")
                .passwordParameter("password")
                .successHandler(signedIn)
                .failureHandler(refused));
        // What this browser keeps of her pictures goes too; her entries that wait are no copies and stay.
        // Sent over HTTPS only.
        http.logout(out -> out.logoutUrl("/sign-out")
                .logoutSuccessUrl("/sign-in")
                .addLogoutHandler(new HeaderWriterLogoutHandler(new ClearSiteDataHeaderWriter(Directive.CACHE))));
        http.exceptionHandling(
                trouble -> trouble.accessDeniedHandler(new Refusals()).authenticationEntryPoint(new AskToSignIn()));
        http.headers(headers -> headers(headers, publiclyVouchedFor));
        http.addFilterBefore(new SignedInState(clock), SecurityContextHolderFilter.class);
        http.addFilterBefore(new EntryOfNobody(), CsrfFilter.class);
        http.addFilterBefore(new PauseFilter(pauses, refused), UsernamePasswordAuthenticationFilter.class);
        http.addFilterBefore(new AccountantRoom(links), AuthorizationFilter.class);
        http.addFilterAfter(new ProofGate(clock), AuthorizationFilter.class);
        return http.build();
    }

    /**
     * That this host is to be reached by HTTPS alone is only said of a public name with a proxy in front. On a name of the
     * house's network it would shut the plain page that leads a phone to trust the shop's own authority.
     */
    private static void headers(HeadersConfigurer<HttpSecurity> headers, boolean publiclyVouchedFor) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(policy -> policy.policy(NO_REFERRER))
                .permissionsPolicyHeader(policy -> policy.policy(DEVICE_POLICY))
                .crossOriginOpenerPolicy(policy -> policy.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .crossOriginResourcePolicy(policy -> policy.policy(CrossOriginResourcePolicy.SAME_ORIGIN))
                .httpStrictTransportSecurity(
                        strict -> strict.requestMatcher(request -> publiclyVouchedFor && mayBeBoundToHttps(request)));
    }

    static boolean mayBeBoundToHttps(HttpServletRequest request) {
        return request.isSecure() && !Host.isLocal(request.getServerName());
    }
}
