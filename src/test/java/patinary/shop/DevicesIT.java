package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** The owner with a phone and a computer. */
@ShopTest
class DevicesIT {

    private static final String PHONE = "Mozilla/5.0 (Linux; Android 15; K)";
    private static final String COMPUTER = "Mozilla/5.0 (X11; Linux x86_64)";
    private static final String NEW = "seven wrens under a plank";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Devices devices;

    @Autowired
    private AccountantLinks links;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Clock clock;

    @Autowired
    private CurrentShop shop;

    @Test
    void eachIsListedAndCanBeSignedOutFromAnother() throws Exception {
        Cookie phone = signIn(PHONE, InventedShop.PASSWORD);
        Cookie computer = signIn(COMPUTER, InventedShop.PASSWORD);
        mvc.perform(get("/me").cookie(computer))
                .andExpect(content().string(containsString("A phone or tablet with Android")))
                .andExpect(content().string(containsString("A computer with Linux")))
                .andExpect(content().string(containsString("This one")))
                .andExpect(content().string(not(containsString("??"))));
        String mark = devices.of(InventedShop.OWNER, "").stream()
                .filter(device -> device.kind().equals("ANDROID"))
                .findFirst()
                .orElseThrow()
                .mark();
        mvc.perform(post("/me/devices/" + mark + "/end").with(csrf()).cookie(computer))
                .andExpect(redirectedUrl("/me"));
        mvc.perform(get("/").cookie(phone)).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(get("/").cookie(computer)).andExpect(status().isOk());
    }

    @Test
    void wasLastSeenAtMostOnceAMinute() throws Exception {
        Cookie phone = signIn(PHONE, InventedShop.PASSWORD);
        long now = clock.millis();
        seen(now - 30_000);
        mvc.perform(get("/me").cookie(phone)).andExpect(status().isOk());
        assertThat(lastSeen()).isEqualTo(now - 30_000);
        seen(now - 90_000);
        mvc.perform(get("/me").cookie(phone)).andExpect(status().isOk());
        assertThat(lastSeen()).isGreaterThanOrEqualTo(now);
    }

    private void seen(long millis) {
        jdbc.sql("update spring_session set last_access_time = ?").param(millis).update();
    }

    private long lastSeen() {
        return jdbc.sql("select max(last_access_time) from spring_session where principal_name is not null")
                .query(Long.class)
                .single();
    }

    @Test
    void allOthersAreSignedOutAtOnce() throws Exception {
        Cookie phone = signIn(PHONE, InventedShop.PASSWORD);
        Cookie lost = signIn(PHONE, InventedShop.PASSWORD);
        Cookie computer = signIn(COMPUTER, InventedShop.PASSWORD);
        mvc.perform(post("/me/devices/end-others").with(csrf()).cookie(computer))
                .andExpect(redirectedUrl("/me"));
        mvc.perform(get("/").cookie(phone)).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(get("/").cookie(lost)).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(get("/").cookie(computer)).andExpect(status().isOk());
    }

    @Test
    void aNewPasswordNeedsTheOldOneAndSignsTheOthersOut() throws Exception {
        Cookie phone = signIn(PHONE, InventedShop.PASSWORD);
        Cookie computer = signIn(COMPUTER, InventedShop.PASSWORD);
        mvc.perform(change(computer, "not the password at all", NEW)).andExpect(status().isUnprocessableContent());
        mvc.perform(change(computer, InventedShop.PASSWORD, "short"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("at least 15 characters")));
        mvc.perform(change(computer, InventedShop.PASSWORD, NEW).param("others", "true"))
                .andExpect(redirectedUrl("/me"));
        mvc.perform(get("/").cookie(phone)).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(get("/").cookie(computer)).andExpect(status().isOk());
        signIn(PHONE, NEW);
    }

    @Test
    void theOthersStayWhereSheTakesTheTickOff() throws Exception {
        Cookie phone = signIn(PHONE, InventedShop.PASSWORD);
        Cookie computer = signIn(COMPUTER, InventedShop.PASSWORD);
        mvc.perform(change(computer, InventedShop.PASSWORD, NEW)).andExpect(redirectedUrl("/me"));
        mvc.perform(get("/").cookie(phone)).andExpect(status().isOk());
    }

    /** An accountant's link may be made out to anybody's name. */
    @Test
    void anAccountantOfTheSameNameIsNoDeviceOfHers() throws Exception {
        String secret = links.make(InventedShop.OWNER, shop.today());
        Cookie accountant = mvc.perform(get("/for-the-accountant/" + secret))
                .andReturn()
                .getResponse()
                .getCookies()[0];
        Cookie computer = signIn(COMPUTER, InventedShop.PASSWORD);
        assertThat(devices.of(InventedShop.OWNER, "")).hasSize(1);
        mvc.perform(post("/me/devices/end-others").with(csrf()).cookie(computer))
                .andExpect(redirectedUrl("/me"));
        mvc.perform(get("/year/2025").cookie(accountant)).andExpect(status().isOk());
    }

    private MockHttpServletRequestBuilder change(Cookie device, String current, String password) {
        return post("/me/password")
                .with(csrf())
                .cookie(device)
                .param("current", current)
                .param("password", password);
    }

    private Cookie signIn(String device, String password) throws Exception {
        return mvc.perform(post("/sign-in")
                        .with(csrf())
                        .header("User-Agent", device)
                        .param("name", InventedShop.OWNER)
                        .param("password", password))
                .andExpect(redirectedUrl("/"))
                .andReturn()
                .getResponse()
                .getCookies()[0];
    }
}
