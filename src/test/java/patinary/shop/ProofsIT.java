package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What a device left open is not enough for. */
@ShopTest
class ProofsIT {

    private static final String ID = "00000000-0000-4000-8000-00000000000f";

    /** Written down beside the table: everything that must ask, each by the method that does it. */
    private static final List<String> ASKED = List.of(
            "GET /shop/archive",
            "GET /shop/archive/download",
            "POST /shop/archive",
            "GET /shop/backups/download",
            "GET /shop/backups/restore",
            "POST /shop/backups/restore",
            "POST /shop/backups/plan",
            "GET /shop/people",
            "POST /shop/people",
            "GET /shop/people/" + ID,
            "POST /shop/people/" + ID,
            "POST /shop/people/" + ID + "/way-in",
            "POST /shop/people/" + ID + "/remove",
            "GET /shop/accountant",
            "POST /shop/accountant",
            "POST /shop/accountant/" + ID + "/end",
            "GET /me",
            "POST /me/password",
            "POST /me/devices/end-others",
            "POST /me/passkeys/remove",
            "POST /me/devices/" + "0".repeat(64) + "/end",
            "GET /year/2025/seal",
            "POST /year/2025/seal",
            "POST /year/2025/seal/open",
            "GET /year/2025.zip",
            "GET /year/2025.xlsx");

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private FindByIndexNameSessionRepository<? extends Session> store;

    @LocalServerPort
    private int port;

    @Test
    void isAskedForBeforeEachOfThese() throws Exception {
        List<String> notAsked = new ArrayList<>();
        for (String step : ASKED) {
            String path = step.replaceAll(".* ", "");
            boolean reading = step.startsWith("GET");
            var answer = mvc.perform((reading ? get(path) : post(path))
                            .with(since(Instant.now().minusSeconds(601))))
                    .andReturn()
                    .getResponse();
            boolean asked = reading
                    ? String.valueOf(answer.getRedirectedUrl()).equals(asking(path))
                    : "/prove/held".equals(answer.getForwardedUrl());
            if (!asked) {
                notAsked.add(step);
            }
        }
        assertThat(notAsked).isEmpty();
    }

    @Test
    void isGoodForTenMinutesAndNeededNowhereElse() throws Exception {
        mvc.perform(get("/shop/archive").with(since(Instant.now().minusSeconds(590))))
                .andExpect(status().isOk());
        for (String path : List.of("/", "/shop", "/sales", "/year/2025")) {
            mvc.perform(get(path).with(since(Instant.EPOCH))).andExpect(status().isOk());
        }
        // A state from before there were proofs has none.
        mvc.perform(get("/shop/archive").with(user("Robin").roles("OWNER")))
                .andExpect(redirectedUrl(asking("/shop/archive")));
    }

    @Test
    void aFileIsChosenAgainAndAScriptIsToldInAWord() throws Exception {
        mvc.perform(multipart("/shop/archive")
                        .file(new MockMultipartFile("archive", new byte[] {1}))
                        .with(since(Instant.EPOCH)))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl(asking("/shop/archive")));
        mvc.perform(get("/me").header("Accept", "application/json").with(since(Instant.EPOCH)))
                .andExpect(status().isForbidden())
                .andExpect(content().string(containsString("proof")));
    }

    @Test
    void leadsNowhereButToWhatAsked() throws Exception {
        for (String to :
                List.of("https://example.net/", "//example.net/", "/sales", "/\\example.net", "/me/../sales")) {
            mvc.perform(post("/prove")
                            .with(InventedShop.owner())
                            .param("proof", InventedShop.PASSWORD)
                            .param("to", to))
                    .andExpect(header().string("Location", "/"));
        }
        mvc.perform(post("/prove")
                        .with(InventedShop.owner())
                        .param("proof", "not the password at all")
                        .param("to", "/me"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(not(containsString("not the password"))));
    }

    /** Over the wire: asked, answered, and what was typed arrives. */
    @Test
    void letsAFormThatWaitedGoOn() throws Exception {
        var visitor = new patinary.testing.Visitor();
        visitor.visit(port);
        visitor.fill("/sign-in", "/sign-in", Map.of("name", InventedShop.OWNER, "password", InventedShop.PASSWORD));
        assertThat(visitor.get("/shop/people").statusCode()).isEqualTo(200);
        String before = states();
        makeOld(store);
        HttpResponse<String> held = visitor.fill("/shop", "/shop/people", Map.of("name", "Sam"));
        assertThat(held.statusCode()).isEqualTo(403);
        assertThat(held.body()).contains("Is it you?").contains("value=\"Sam\"");
        HttpResponse<String> on = visitor.fill(
                "/shop",
                "/prove",
                Map.of("name", "Sam", "to", "/shop/people", "sending", "POST", "proof", InventedShop.PASSWORD));
        assertThat(on.statusCode()).isEqualTo(307);
        assertThat(on.headers().firstValue("Location").orElseThrow()).isEqualTo("/shop/people");
        assertThat(states()).as("the state has a new name").isNotEqualTo(before);
        assertThat(visitor.get("/shop/people").statusCode()).isEqualTo(200);
        makeOld(store);
        assertThat(visitor.get("/shop/people").headers().firstValue("Location").orElseThrow())
                .isEqualTo(asking("/shop/people"));
    }

    /** Over the wire: a large file is not kept, and the answer waits until the browser has sent it all. */
    @Test
    void aLargeFileIsChosenAgain() throws Exception {
        var visitor = new patinary.testing.Visitor();
        visitor.visit(port);
        visitor.fill("/sign-in", "/sign-in", Map.of("name", InventedShop.OWNER, "password", InventedShop.PASSWORD));
        makeOld(store);

        HttpResponse<String> asked = visitor.upload("/shop", "/shop/archive", "shop.zip", new byte[20 * 1024 * 1024]);

        assertThat(asked.statusCode()).isEqualTo(303);
        assertThat(asked.headers().firstValue("Location").orElseThrow()).isEqualTo(asking("/shop/archive"));
    }

    private String states() {
        return jdbc.sql("select max(session_id) from spring_session where principal_name is not null")
                .query(String.class)
                .single();
    }

    /** Lets eleven minutes pass since she showed that it is her. */
    static <S extends Session> void makeOld(FindByIndexNameSessionRepository<S> store) {
        S state = store.findByPrincipalName(InventedShop.OWNER)
                .values()
                .iterator()
                .next();
        SecurityContext context = state.getRequiredAttribute("SPRING_SECURITY_CONTEXT");
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                context.getAuthentication().getPrincipal(),
                null,
                rights(Instant.now().minusSeconds(660))));
        state.setAttribute("SPRING_SECURITY_CONTEXT", context);
        store.save(state);
    }

    private static String asking(String path) {
        return "/prove?back=" + URLEncoder.encode(path, StandardCharsets.UTF_8);
    }

    private static List<GrantedAuthority> rights(Instant shown) {
        return List.of(
                new SimpleGrantedAuthority("ROLE_OWNER"),
                FactorGrantedAuthority.withAuthority(FactorGrantedAuthority.PASSWORD_AUTHORITY)
                        .issuedAt(shown)
                        .build());
    }

    private static RequestPostProcessor since(Instant shown) {
        return request -> csrf().postProcessRequest(
                        user(InventedShop.OWNER).authorities(rights(shown)).postProcessRequest(request));
    }
}
