package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import patinary.testing.InventedShop;
import patinary.testing.PageShape;
import patinary.testing.ShopTest;

/**
 * The headers that protect a browser, on every address of the program, on its files, and on its refusals. The names and what
 * they must say: OWASP ASVS 5.0, chapter V3.4, and 14.3.2 for what may not be kept.
 */
@ShopTest
class HeadersIT {

    private static final Map<String, String> ALWAYS = Map.of(
            "X-Content-Type-Options", "nosniff",
            "Referrer-Policy", "no-referrer",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin",
            "X-Frame-Options", "DENY");

    private static final String ID = "00000000-0000-4000-8000-000000000001";

    /** The same for everybody and named by their content: they may be kept. */
    private static final Set<String> FILES = Set.of(
            "/css/patinary.css",
            "/js/patinary.js",
            "/img/mark.svg",
            "/img/icon-192.png",
            "/sw.js",
            "/manifest.webmanifest");

    @Autowired
    private MockMvc mvc;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping routes;

    @Test
    void standOnEveryAnswer() throws Exception {
        List<String> faults = new ArrayList<>();
        Set<String> addresses = addresses();
        for (String address : addresses) {
            faults.addAll(faults(address, answer(get(URI.create(address)).with(InventedShop.owner()))));
            faults.addAll(faults(address + " signed out", answer(get(URI.create(address)))));
        }
        for (String refused : List.of("/no-such-page", "/css/none.css", "/pieces/not-an-id", "/%2e%2e/x", "/a;b=1")) {
            faults.addAll(faults(refused, answer(get(URI.create(refused)).with(InventedShop.owner()))));
        }
        assertThat(faults).isEmpty();
        assertThat(addresses).hasSizeGreaterThan(200);
    }

    @Test
    void whatIsThereForEverybodyMayBeKeptAndIsGuardedAsWell() throws Exception {
        for (String file : FILES) {
            MockHttpServletResponse answer = answer(get(file));
            assertThat(answer.getStatus()).as(file).isEqualTo(200);
            assertThat(faults(file, answer)).as(file).isEmpty();
            assertThat(answer.getHeader("Set-Cookie")).as(file).isNull();
        }
    }

    @Test
    void anotherSiteIsNeverLetIn() throws Exception {
        for (String address : List.of("/", "/sign-in", "/js/patinary.js", "/phone/token", "/actuator/health")) {
            MockHttpServletResponse asked = answer(
                    get(address).header("Origin", "https://elsewhere.example").with(InventedShop.owner()));
            MockHttpServletResponse before = answer(request(HttpMethod.OPTIONS, address)
                    .header("Origin", "https://elsewhere.example")
                    .header("Access-Control-Request-Method", "POST")
                    .with(InventedShop.owner()));
            assertThat(cors(asked)).as(address).isEmpty();
            assertThat(cors(before)).as(address).isEmpty();
        }
    }

    @Test
    void methodsThatNoPageUsesAreRefused() throws Exception {
        for (String method : List.of("TRACE", "CONNECT", "PUT", "DELETE", "PATCH", "INVENTED")) {
            for (String address : List.of("/", "/sign-in", "/receipts", "/css/patinary.css")) {
                int status = answer(request(HttpMethod.valueOf(method), URI.create(address))
                                .with(InventedShop.owner()))
                        .getStatus();
                assertThat(status).as(method + " " + address).isIn(400, 403, 404, 405, 501);
            }
        }
    }

    @Test
    void nothingIsToldOfTheProgramButThatItRuns() throws Exception {
        for (String name : List.of(
                "",
                "/env",
                "/beans",
                "/heapdump",
                "/loggers",
                "/mappings",
                "/metrics",
                "/info",
                "/threaddump",
                "/httpexchanges",
                "/configprops",
                "/scheduledtasks",
                "/flyway",
                "/sessions",
                "/shutdown")) {
            assertThat(answer(get("/actuator" + name).with(InventedShop.owner()))
                            .getStatus())
                    .as(name)
                    .isEqualTo(404);
        }
        assertThat(answer(get("/actuator/health")).getContentAsString())
                .doesNotContain("components", "database", "disk");
        for (String page :
                List.of("/h2-console", "/.git/config", "/WEB-INF/web.xml", "/application.yaml", "/db/demo/shop.csv")) {
            assertThat(answer(get(page).with(InventedShop.owner())).getStatus())
                    .as(page)
                    .isEqualTo(404);
        }
    }

    private Set<String> addresses() {
        Set<String> addresses = new LinkedHashSet<>(List.of("/actuator/health"));
        routes.getHandlerMethods().keySet().forEach(route -> {
            Set<RequestMethod> methods = route.getMethodsCondition().getMethods();
            if (methods.isEmpty() || methods.contains(RequestMethod.GET)) {
                route.getPatternValues()
                        .forEach(pattern -> addresses.add(
                                PageShape.filled(pattern, variable -> variable.startsWith("year") ? "2025" : ID)));
            }
        });
        return addresses;
    }

    private List<String> faults(String address, MockHttpServletResponse answer) {
        List<String> faults = new ArrayList<>();
        ALWAYS.forEach((name, value) -> {
            if (!value.equals(answer.getHeader(name))) {
                faults.add(address + " " + answer.getStatus() + ": " + name + " is " + answer.getHeader(name));
            }
        });
        String policy = String.valueOf(answer.getHeader("Content-Security-Policy"));
        if (!policy.startsWith("default-src 'none'")
                || policy.contains("unsafe")
                || policy.contains("*")
                || !policy.contains("frame-ancestors 'none'")
                || !policy.contains("object-src 'none'")
                || !policy.contains("base-uri 'none'")) {
            faults.add(address + ": policy " + policy);
        }
        if (!String.valueOf(answer.getHeader("Permissions-Policy")).contains("geolocation=()")) {
            faults.add(address + ": no Permissions-Policy");
        }
        if (!mayBeKept(address, answer)
                && !String.valueOf(answer.getHeader("Cache-Control")).contains("no-store")) {
            faults.add(address + " " + answer.getStatus() + ": may be kept: " + answer.getHeader("Cache-Control"));
        }
        cors(answer).forEach(name -> faults.add(address + ": " + name));
        if (answer.getHeader("Server") != null || answer.getHeader("X-Powered-By") != null) {
            faults.add(address + ": names the server");
        }
        return faults;
    }

    private static boolean mayBeKept(String address, MockHttpServletResponse answer) {
        return answer.getStatus() == 200 && FILES.contains(address.replace(" signed out", ""));
    }

    private static Set<String> cors(MockHttpServletResponse answer) {
        Set<String> names = new TreeSet<>(answer.getHeaderNames());
        names.removeIf(name -> !name.toLowerCase(Locale.ROOT).startsWith("access-control"));
        return names;
    }

    private MockHttpServletResponse answer(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request).andReturn().getResponse();
    }
}
