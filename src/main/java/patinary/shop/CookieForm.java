package patinary.shop;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;

/**
 * The cookie of a sign-in. Behind HTTPS ({@code patinary.https=true}) it carries the prefix that ties it to this very
 * host; plain {@code http://localhost} cannot.
 */
@Configuration(proxyBeanMethods = false)
class CookieForm {

    @Bean
    CookieSerializer cookieSerializer(@Value("${patinary.https:false}") boolean https) {
        DefaultCookieSerializer cookie = new DefaultCookieSerializer();
        cookie.setCookieName(https ? "__Host-patinary" : "patinary");
        cookie.setUseSecureCookie(https);
        cookie.setUseHttpOnlyCookie(true);
        cookie.setSameSite("Lax");
        cookie.setCookiePath("/");
        cookie.setRememberMeRequestAttribute(SignedInState.OWN_DEVICE);
        return cookie;
    }
}
