package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.result.MockMvcResultMatchers;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Every door is closed unless it is named here as open. */
@ShopTest
class DoorsIT {

    private static final Set<String> OPEN = Set.of(
            "/sign-in",
            "/setup",
            "/way-in",
            "/passkey",
            "/passkey/options",
            "/help",
            "/error",
            "/trust",
            "/trust/authority.crt",
            "/trust/authority.pem",
            "/trust/page.svg",
            "/trust/shop.svg",
            "/manifest.webmanifest");

    /** Shells without anything of the shop; what is sent to the same address needs a sign-in. */
    private static final Set<String> OPEN_TO_READ = Set.of(
            "/buy",
            "/stall",
            "/bench/now",
            "/count",
            "/waiting",
            "/phone/token",
            "/sw.js",
            "/for-the-accountant/{secret}");

    @Autowired
    private MockMvc mvc;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping routes;

    @Test
    void aMisspeltAddressLeadsToAKindPage() throws Exception {
        mvc.perform(MockMvcRequestBuilders.get("/pieces/not-a-piece").with(InventedShop.owner()))
                .andExpect(MockMvcResultMatchers.status().isNotFound());
    }

    @Test
    void everyRouteNeedsASignIn() throws Exception {
        List<String> open = new ArrayList<>();
        int tried = 0;
        for (RequestMappingInfo route : routes.getHandlerMethods().keySet()) {
            for (String pattern : route.getPatternValues()) {
                if (OPEN.contains(pattern)) {
                    continue;
                }
                if (OPEN_TO_READ.contains(pattern) && readsOnly(route)) {
                    continue;
                }
                tried++;
                String path = pattern.replaceAll("\\{[^}]*}", "1");
                Set<RequestMethod> methods = route.getMethodsCondition().getMethods();
                HttpMethod method = methods.isEmpty()
                        ? HttpMethod.GET
                        : methods.iterator().next().asHttpMethod();
                String to = mvc.perform(
                                MockMvcRequestBuilders.request(method, path).with(csrf()))
                        .andReturn()
                        .getResponse()
                        .getRedirectedUrl();
                if (to == null || !to.endsWith("/sign-in")) {
                    open.add(method + " " + path);
                }
            }
        }
        assertThat(tried).isPositive();
        assertThat(open).isEmpty();
    }

    private static boolean readsOnly(RequestMappingInfo route) {
        return route.getMethodsCondition().getMethods().equals(Set.of(RequestMethod.GET));
    }

    @Test
    void everyAnswerCarriesTheProtectingHeaders() throws Exception {
        mvc.perform(get("/sign-in"))
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Security-Policy", Matchers.startsWith("default-src 'none'")))
                .andExpect(header().string("Referrer-Policy", "no-referrer"))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Cross-Origin-Opener-Policy", "same-origin"))
                .andExpect(header().string("Cross-Origin-Resource-Policy", "same-origin"))
                .andExpect(header().string("Cache-Control", Matchers.containsString("no-store")));
    }

    @Test
    void aChangeNeedsItsToken() throws Exception {
        mvc.perform(post("/shop").with(user(InventedShop.OWNER).roles("OWNER")))
                .andExpect(forwardedUrl("/refused/too-old"));
    }

    /** One of the databases cannot be asked for it, the other would keep it: wherever it stands, the request goes no further. */
    @Test
    void aSignThatNoKeyWritesIsRefusedWhoeverAsksForIt() throws Exception {
        String odd = "a\u0000b";
        for (String search : List.of(
                "/pieces q", "/pieces place", "/sales q", "/receipts q", "/buyers q", "/handbook q", "/history who")) {
            String[] asked = search.split(" ");
            mvc.perform(get(asked[0]).param(asked[1], odd).with(InventedShop.owner()))
                    .andExpect(status().isBadRequest());
        }
        mvc.perform(post("/sign-in").param("name", odd).param("password", odd).with(csrf()))
                .andExpect(status().isBadRequest());
        mvc.perform(post("/places/rename")
                        .param("place", odd)
                        .param("name", odd)
                        .with(InventedShop.owner()))
                .andExpect(status().isBadRequest());
        // Other signs that are rarely seen are searched for like any.
        mvc.perform(get("/pieces").param("q", "a\u0001\t\u00e9\ud83e\ude91").with(InventedShop.owner()))
                .andExpect(status().isOk());
    }

    @Test
    void theSettingsAreTheOwnersAlone() throws Exception {
        for (String role : List.of("HELPER", "ACCOUNTANT")) {
            mvc.perform(get("/shop").with(user("Kim").roles(role))).andExpect(forwardedUrl("/refused"));
        }
        mvc.perform(get("/shop").with(InventedShop.owner())).andExpect(status().isOk());
    }

    @Test
    void anAccountantReadsAndChangesNothing() throws Exception {
        mvc.perform(get("/year/2025").with(user("Kim").roles("ACCOUNTANT"))).andExpect(status().isOk());
        mvc.perform(post("/receipts").with(csrf()).with(user("Kim").roles("ACCOUNTANT")))
                .andExpect(forwardedUrl("/refused"));
    }

    @Test
    void aScriptIsToldTheStatusInsteadOfASignInPage() throws Exception {
        mvc.perform(get("/").header("Accept", "application/json")).andExpect(status().isUnauthorized());
    }

    @Test
    void onlyTheHealthIsTold() throws Exception {
        mvc.perform(get("/actuator/health")).andExpect(status().isOk());
        mvc.perform(get("/actuator/env").with(InventedShop.owner())).andExpect(status().isNotFound());
    }

    @Test
    void setupIsGoneOnceTheShopIsOpen() throws Exception {
        mvc.perform(get("/setup")).andExpect(status().isNotFound());
        mvc.perform(post("/setup").with(csrf())).andExpect(status().isNotFound());
    }

    @Test
    void aStaleChangeOfTheSettingsIsRefused() throws Exception {
        mvc.perform(settings("0", "First")).andExpect(status().isSeeOther()).andExpect(redirectedUrl("/shop"));
        mvc.perform(settings("0", "Second")).andExpect(status().isConflict());
    }

    private static org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder settings(
            String version, String name) {
        return post("/shop")
                .with(InventedShop.owner())
                .param("version", version)
                .param("shopName", name)
                .param("taxTable", "plain")
                .param("hourlyRate", "18")
                .param("costingMethod", "AVERAGE")
                .param("timeZone", "Europe/Lisbon")
                .param("language", "en")
                .param("country", "PT");
    }
}
