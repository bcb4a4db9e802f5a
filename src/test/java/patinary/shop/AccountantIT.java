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
import java.net.URI;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import patinary.testing.ShopTest;

/** An accountant with a link reads the years, and nothing else by any way. */
@ShopTest
class AccountantIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private AccountantLinks links;

    @Autowired
    private CurrentShop shop;

    @Test
    void theLinkLeadsToTheYearsUntilItIsEnded() throws Exception {
        String secret = links.make("Alder", shop.today());
        assertThat(jdbc.sql("select token_hash from accountant_link")
                        .query(String.class)
                        .single())
                .doesNotContain(secret)
                .hasSize(64);
        Cookie inside = enter(secret);
        mvc.perform(get("/year/2025").cookie(inside))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("href=\"/sales\""))))
                .andExpect(content().string(not(containsString("/year/2025/seal"))))
                .andExpect(content().string(containsString("Sign out")));
        mvc.perform(get("/year/2025/journal.csv").cookie(inside)).andExpect(status().isOk());
        mvc.perform(get("/").cookie(inside)).andExpect(forwardedUrl("/refused"));
        mvc.perform(get("/buy").cookie(inside)).andExpect(forwardedUrl("/refused"));
        mvc.perform(get("/year/2025/seal").cookie(inside)).andExpect(forwardedUrl("/refused"));
        mvc.perform(get(URI.create("/year/2025/s%65al")).cookie(inside)).andExpect(forwardedUrl("/refused"));
        mvc.perform(post("/year/2025/seal").cookie(inside).with(csrf())).andExpect(forwardedUrl("/refused"));
        AccountantLinks.Link link = links.all().get(0);
        assertThat(link.lastUsedAt()).isNotNull();

        mvc.perform(post("/shop/accountant/" + link.id() + "/end").with(owner()))
                .andExpect(redirectedUrl("/shop/accountant"));
        mvc.perform(get("/year/2025").cookie(inside)).andExpect(forwardedUrl("/refused"));
        mvc.perform(get("/for-the-accountant/" + secret)).andExpect(status().isNotFound());
    }

    @Test
    void aLinkWhoseTimeIsOverOpensNothing() throws Exception {
        String secret = links.make("Alder", shop.today());
        Cookie inside = enter(secret);
        jdbc.sql("update accountant_link set ends_on = ?")
                .param(shop.today().minusDays(1))
                .update();
        mvc.perform(get("/year/2025").cookie(inside)).andExpect(forwardedUrl("/refused"));
        mvc.perform(get("/for-the-accountant/" + secret)).andExpect(status().isNotFound());
    }

    @Test
    void guessingIsSlowedDownAndKeepsNobodyFromSigningIn() throws Exception {
        String secret = links.make("Alder", shop.today());
        RequestPostProcessor from = sender -> {
            sender.setRemoteAddr("192.0.2.77");
            return sender;
        };
        for (int i = 0; i < 6; i++) {
            mvc.perform(get("/for-the-accountant/guess" + i).with(from)).andExpect(status().isNotFound());
        }
        mvc.perform(get("/for-the-accountant/" + secret).with(from)).andExpect(status().isNotFound());
        mvc.perform(get("/sign-in").with(from)).andExpect(status().isOk());
    }

    @Test
    void theOwnerMakesALinkAndSeesItOnce() throws Exception {
        mvc.perform(post("/shop/accountant").with(owner()).param("forWhom", "").param("endsOn", "2099-01-01"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Say for whom it is")))
                .andExpect(content().string(containsString("at most 400 days away")));
        var made = mvc.perform(post("/shop/accountant")
                        .with(owner())
                        .param("forWhom", "Alder")
                        .param("endsOn", shop.today().plusDays(30).toString()))
                .andExpect(redirectedUrl("/shop/accountant"))
                .andReturn();
        String address = String.valueOf(made.getFlashMap().get("secret"));
        assertThat(address).contains("/for-the-accountant/");
        mvc.perform(get("/shop/accountant").with(owner()))
                .andExpect(content().string(containsString("Alder")))
                .andExpect(content().string(not(containsString(address))))
                .andExpect(content().string(not(containsString("??"))));
        enter(address.substring(address.lastIndexOf('/') + 1));
    }

    /** The cookie with which a browser goes on after the link. */
    private Cookie enter(String secret) throws Exception {
        Cookie[] cookies = mvc.perform(get("/for-the-accountant/" + secret))
                .andExpect(redirectedUrl("/year"))
                .andReturn()
                .getResponse()
                .getCookies();
        assertThat(cookies).hasSize(1);
        return cookies[0];
    }
}
