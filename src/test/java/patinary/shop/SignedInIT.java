package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What a sign-in is, once there is one. */
@ShopTest
@ExtendWith(Browser.class)
class SignedInIT {

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Clock clock;

    @Test
    void isKeptInTheDatabaseForThirtyDaysOnAnOwnDevice(Browser.Visit visit) {
        Page page = visit.open("/sign-in");
        page.fill("#name", InventedShop.OWNER);
        page.fill("#password", InventedShop.PASSWORD);
        page.check("#ownDevice");
        page.click("main button.main");
        assertThat(page.textContent("h1")).isEqualTo("Bench and shelf");
        assertThat(lifetimes()).isEqualTo(30 * 24 * 3600L);
        Cookie cookie = visit.context().cookies().get(0);
        assertThat(cookie.httpOnly).isTrue();
        assertThat(cookie.expires)
                .isGreaterThan(clock.instant().plus(SignedInState.ELSEWHERE).getEpochSecond());
    }

    @Test
    void lastsTwelveHoursElsewhereAndEndsWhenSheSignsOut(Browser.Visit visit) {
        Page page = visit.signIn();
        assertThat(lifetimes()).isEqualTo(12 * 3600L);
        page.setViewportSize(1280, 800);
        page.click("form.leave button");
        page.waitForURL("**/sign-in");
        assertThat(jdbc.sql("select count(*) from spring_session where principal_name is not null")
                        .query(Long.class)
                        .single())
                .isZero();
        visit.open("/");
        assertThat(page.url()).endsWith("/sign-in");
    }

    @Test
    void leadsToThePageThatWasAskedFor(Browser.Visit visit) {
        Page page = visit.open("/shop?from=bookmark");
        assertThat(page.url()).endsWith("/sign-in");
        page.fill("#name", InventedShop.OWNER);
        page.fill("#password", InventedShop.PASSWORD);
        page.click("main button.main");
        assertThat(page.url()).endsWith("/shop?from=bookmark");
    }

    @Test
    void endsForGoodAfterItsLongestTime(Browser.Visit visit) {
        Page page = visit.signIn();
        long longAgo =
                clock.instant().minus(SignedInState.ELSEWHERE).minusSeconds(60).toEpochMilli();
        jdbc.sql("update spring_session set creation_time = ?").param(longAgo).update();
        visit.open("/");
        assertThat(page.url()).endsWith("/sign-in");
    }

    @Test
    void letsTheOwnerChangeTheSettings(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/shop");
        visit.look("settings");
        page.fill("#hourlyRate", "1,234");
        page.click("main button.main");
        assertThat(page.textContent("#hourlyRate-error")).contains("two ways");
        page.fill("#hourlyRate", "$24.50");
        page.click("main button.main");
        assertThat(page.textContent(".notice[role=status]")).contains("saved");
        assertThat(page.inputValue("#hourlyRate")).isEqualTo("24.50");
        visit.look("settings-saved");
    }

    private long lifetimes() {
        return jdbc.sql("select max_inactive_interval from spring_session where principal_name = ?")
                .param(InventedShop.OWNER)
                .query(Long.class)
                .single();
    }
}
