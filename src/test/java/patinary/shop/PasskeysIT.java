package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.test.web.servlet.MockMvc;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** A passkey of a device that the browser plays (W3C Web Authentication, virtual authenticators). */
@ShopTest
@ExtendWith(Browser.class)
class PasskeysIT {

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FindByIndexNameSessionRepository<? extends Session> store;

    @Test
    void isMadeAndSignsInAndShowsThatItIsHer(Browser.Visit visit) {
        Page page = visit.signIn();
        device(visit);
        visit.open("/me");
        page.fill("#label", "my phone");
        page.click("[data-passkey=make] button");
        page.waitForSelector("th:has-text('my phone')");
        visit.look("me");
        assertThat(jdbc.sql("select place from passkey").query(String.class).single())
                .isEqualTo("localhost");

        signOut(page);
        visit.look("sign-in");
        page.click("[data-passkey=enter] button");
        page.waitForSelector("h1:has-text('Bench and shelf')");
        visit.open("/me");
        assertThat(page.textContent("h1")).as("a passkey just used is proof").isEqualTo("You and your devices");

        visit.open("/shop/people");
        ProofsIT.makeOld(store);
        page.fill("[name=name]", "Sam");
        page.click("main form[action='/shop/people'] button");
        page.waitForSelector("h1:has-text('Is it you?')");
        visit.look("prove");
        page.click("[data-passkey=prove] button");
        page.waitForSelector("text=Sam may come in");

        ProofsIT.makeOld(store);
        page.navigate(page.url().replaceAll("(//[^/]+).*", "$1/shop/people"));
        page.waitForSelector("h1:has-text('Is it you?')");
        page.click("[data-passkey=prove] button");
        page.waitForURL("**/shop/people");

        visit.open("/me");
        page.click("form[action='/me/passkeys/remove'] button");
        page.waitForSelector("text=None was made yet");
        signOut(page);
        page.click("[data-passkey=enter] button");
        page.waitForSelector("text=That did not work");
        assertThat(page.url()).endsWith("/sign-in");
    }

    @Test
    void nothingIsTakenThatWasNotAskedFor() throws Exception {
        mvc.perform(post("/passkey")
                        .with(InventedShop.owner())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"id\":\"AAAA\"}"))
                .andExpect(status().isBadRequest());
        mvc.perform(post("/me/passkeys")
                        .with(InventedShop.owner())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"label\":\"x\"}"))
                .andExpect(status().isBadRequest());
        mvc.perform(post("/passkey/options").with(InventedShop.owner()).with(request -> {
                    request.setServerName("evil.example");
                    return request;
                }))
                .andExpect(status().isNotFound());
    }

    private static void signOut(Page page) {
        page.setViewportSize(1280, 800);
        page.click("form.leave button");
        page.waitForURL("**/sign-in");
    }

    private static void device(Browser.Visit visit) {
        CDPSession developer = visit.context().newCDPSession(visit.page());
        developer.send("WebAuthn.enable");
        JsonObject options = new JsonObject();
        options.addProperty("protocol", "ctap2");
        options.addProperty("transport", "internal");
        options.addProperty("hasResidentKey", true);
        options.addProperty("hasUserVerification", true);
        options.addProperty("isUserVerified", true);
        options.addProperty("automaticPresenceSimulation", true);
        JsonObject arguments = new JsonObject();
        arguments.add("options", options);
        developer.send("WebAuthn.addVirtualAuthenticator", arguments);
    }
}
