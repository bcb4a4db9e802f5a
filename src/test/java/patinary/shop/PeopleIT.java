package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import jakarta.servlet.http.Cookie;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** A helper comes, works and goes. */
@ShopTest
class PeopleIT {

    private static final String PASSWORD = "three herons in a drawer";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private WaysIn ways;

    @Test
    void aHelperComesInByACodeThatIsToldOnceAndWorksOnce() throws Exception {
        WaysIn.Given given = letIn("Sam");
        assertThat(given.name()).isEqualTo("Sam");
        mvc.perform(get("/shop/people").with(owner()))
                .andExpect(content().string(containsString("Record and look")))
                .andExpect(content().string(not(containsString(given.code()))));
        assertThat(jdbc.sql("select code_hash from way_in").query(String.class).single())
                .startsWith("$argon2id$");

        mvc.perform(enter("Sam", given.code(), "too short"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("at least 15 characters")))
                .andExpect(content().string(not(containsString("too short"))));
        mvc.perform(enter("Sam", given.code().toUpperCase().replace("-", " "), PASSWORD))
                .andExpect(redirectedUrl("/sign-in"));
        mvc.perform(enter("Sam", given.code(), PASSWORD)).andExpect(status().isUnprocessableContent());

        Cookie inside = signIn("Sam", PASSWORD);
        mvc.perform(get("/").cookie(inside)).andExpect(status().isOk());
        mvc.perform(get("/shop").cookie(inside)).andExpect(forwardedUrl("/refused"));
        mvc.perform(get("/year/2025").cookie(inside)).andExpect(forwardedUrl("/refused"));
    }

    @Test
    void aHelperThatIsRemovedIsOutAtOnce() throws Exception {
        Cookie inside = helper("Sam");
        mvc.perform(post("/shop/people/" + id("Sam") + "/remove").with(owner()))
                .andExpect(redirectedUrl("/shop/people"));
        mvc.perform(get("/").cookie(inside)).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(signingIn("Sam", PASSWORD)).andExpect(redirectedUrl("/sign-in?failed"));
        assertThat(jdbc.sql("select count(*) from person").query(Long.class).single())
                .isEqualTo(1);
    }

    @Test
    void anotherNameIsSignedInAnew() throws Exception {
        Cookie inside = helper("Sam");
        mvc.perform(post("/shop/people/" + id("Sam"))
                        .with(owner())
                        .param("version", "1")
                        .param("name", "Samira"))
                .andExpect(redirectedUrl("/shop/people"));
        mvc.perform(get("/").cookie(inside)).andExpect(redirectedUrl("/sign-in"));
        signIn("Samira", PASSWORD);
        mvc.perform(post("/shop/people/" + id("Samira"))
                        .with(owner())
                        .param("version", "1")
                        .param("name", "Sam"))
                .andExpect(status().isConflict());
    }

    @Test
    void aNewWayInLeavesTheOldUntilItIsUsed() throws Exception {
        Cookie inside = helper("Sam");
        jdbc.sql("""
                        insert into passkey (credential_id, person_id, label, place, public_key, attestation_object, signature_count,
                            uv_initialized, backup_eligible, backup_state, transports, created_at)
                        values ('lost', ?, 'phone', 'localhost', ?, ?, 0, true, false, false, '', current_timestamp)
                        """).params(id("Sam"), new byte[1], new byte[1]).update();
        String code = given(mvc.perform(
                        post("/shop/people/" + id("Sam") + "/way-in").with(owner())))
                .code();
        mvc.perform(get("/").cookie(inside)).andExpect(status().isOk());
        mvc.perform(enter("Sam", code, "five newts beside a kiln")).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(get("/").cookie(inside)).andExpect(redirectedUrl("/sign-in"));
        assertThat(jdbc.sql("select count(*) from passkey").query(Long.class).single())
                .as("a lost phone does not let in what a lost password does not")
                .isZero();
        signIn("Sam", "five newts beside a kiln");
    }

    @Test
    void aCodeIsLateAfterAQuarterOfAnHourAndWorthlessAfterTenWrongOnes() throws Exception {
        String late = letIn("Sam").code();
        jdbc.sql("update way_in set ends_at = ?")
                .param(Instant.now().minusSeconds(1).atOffset(ZoneOffset.UTC))
                .update();
        assertThat(ways.use("Sam", late, PASSWORD)).isFalse();
        String guessed = ways.give("Sam").orElseThrow().code();
        jdbc.sql("update way_in set wrong = 9").update();
        assertThat(ways.use("Sam", "a wrong one", PASSWORD)).isFalse();
        assertThat(ways.use("Sam", guessed, PASSWORD)).isFalse();
        assertThat(ways.use("Nobody", guessed, PASSWORD)).isFalse();
    }

    /** What the console command prints, for the owner who lost her password. */
    @Test
    void theConsoleLetsTheOwnerInAgain() throws Exception {
        WaysIn.Given given = ways.give("").orElseThrow();
        assertThat(given.name()).isEqualTo(InventedShop.OWNER);
        mvc.perform(enter(InventedShop.OWNER, given.code(), PASSWORD)).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(signingIn(InventedShop.OWNER, InventedShop.PASSWORD)).andExpect(redirectedUrl("/sign-in?failed"));
        signIn(InventedShop.OWNER, PASSWORD);
        assertThat(ways.give("Nobody")).isEmpty();
    }

    @Test
    void guessingACodeIsSlowedDownAsAtTheSignIn() throws Exception {
        String code = letIn("Sam").code();
        for (int i = 0; i < 5; i++) {
            mvc.perform(enter("Sam", "guess-" + i, PASSWORD)).andExpect(status().isUnprocessableContent());
        }
        mvc.perform(enter("Sam", code, PASSWORD)).andExpect(status().isUnprocessableContent());
    }

    @Test
    void theOwnerIsNoHelperAndNamesAreToldApart() throws Exception {
        mvc.perform(post("/shop/people/" + id(InventedShop.OWNER) + "/remove").with(owner()))
                .andExpect(status().isNotFound());
        mvc.perform(post("/shop/people").with(owner()).param("name", "robin"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Somebody has this name already")));
        mvc.perform(post("/shop/people").with(owner()).param("name", " ")).andExpect(status().isUnprocessableContent());
    }

    /** Whoever guesses names learns nothing: the answer is the same to the letter. */
    @Test
    void anUnknownNameIsRefusedAsAKnownOne() throws Exception {
        letIn("Sam");
        for (String name : new String[] {InventedShop.OWNER, "Sam", "Nobody"}) {
            mvc.perform(signingIn(name, "not the password at all")).andExpect(redirectedUrl("/sign-in?failed"));
        }
    }

    private Cookie helper(String name) throws Exception {
        mvc.perform(enter(name, letIn(name).code(), PASSWORD)).andExpect(redirectedUrl("/sign-in"));
        return signIn(name, PASSWORD);
    }

    private WaysIn.Given letIn(String name) throws Exception {
        return given(mvc.perform(post("/shop/people").with(owner()).param("name", name)));
    }

    private static WaysIn.Given given(ResultActions answer) throws Exception {
        return (WaysIn.Given) answer.andExpect(redirectedUrl("/shop/people"))
                .andReturn()
                .getFlashMap()
                .get("given");
    }

    private Cookie signIn(String name, String password) throws Exception {
        return mvc.perform(signingIn(name, password))
                .andExpect(redirectedUrl("/"))
                .andReturn()
                .getResponse()
                .getCookies()[0];
    }

    private static org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder signingIn(
            String name, String password) {
        return post("/sign-in").with(csrf()).param("name", name).param("password", password);
    }

    private static org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder enter(
            String name, String code, String password) {
        return post("/way-in")
                .with(csrf())
                .param("name", name)
                .param("code", code)
                .param("password", password);
    }

    private UUID id(String name) {
        return jdbc.sql("select id from person where name = ?")
                .param(name)
                .query(UUID.class)
                .single();
    }
}
