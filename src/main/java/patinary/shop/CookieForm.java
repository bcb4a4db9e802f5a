package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;

/**
 * The cookie of a sign-in. Over HTTPS, and always where {@code patinary.https=true} says that a proxy speaks it, the
 * cookie is never sent in the clear and carries the prefix that ties it to this very host. A sign-in over plain HTTP, as
 * on {@code http://localhost}, has a cookie of another name and does not count over HTTPS.
 */
@Configuration(proxyBeanMethods = false)
class CookieForm {

    @Bean
    CookieSerializer cookieSerializer(@Value("${patinary.https:false}") boolean behindHttps) {
        CookieSerializer secure = cookie("__Host-patinary", true);
        CookieSerializer plain = cookie("patinary", false);
        return new CookieSerializer() {
            @Override
            public void writeCookieValue(CookieValue value) {
                fitFor(value.getRequest()).writeCookieValue(value);
            }

            @Override
            public List<String> readCookieValues(HttpServletRequest request) {
                return fitFor(request).readCookieValues(request);
            }

            private CookieSerializer fitFor(HttpServletRequest request) {
                return behindHttps || request.isSecure() ? secure : plain;
            }
        };
    }

    private static CookieSerializer cookie(String name, boolean https) {
        DefaultCookieSerializer cookie = new DefaultCookieSerializer();
        cookie.setCookieName(name);
        cookie.setUseSecureCookie(https);
        cookie.setUseHttpOnlyCookie(true);
        cookie.setSameSite("Lax");
        cookie.setCookiePath("/");
        cookie.setRememberMeRequestAttribute(SignedInState.OWN_DEVICE);
        return cookie;
    }
}
