package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.TestDatabase;

/** From an empty database to the first page, as a person does it. */
@ShopTest(open = false)
@ExtendWith(Browser.class)
class FirstStartIT {

    @Test
    void leadsFromSetupToSignInToTheHomePage(Browser.Visit visit) {
        Page page = visit.open("/pieces");
        assertThat(page.url()).endsWith("/setup");
        visit.look("setup");

        fill(page, "a wrong code", "too short");
        page.selectOption("#timeZone", "");
        page.click("main button.main");
        assertThat(page.title()).startsWith("Error: ");
        assertThat(page.inputValue("#shopName")).isEqualTo(InventedShop.NAME);
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("summary");
        assertThat(page.textContent("#password-error")).contains("15 characters");
        assertThat(page.textContent("#timeZone-error")).contains("Choose where the shop is");
        assertThat(page.inputValue("#timeZone")).isEmpty();
        visit.look("setup-refused");

        fill(page, TestDatabase.SETUP_CODE, InventedShop.PASSWORD);
        page.click("main button.main");
        assertThat(page.url()).endsWith("/sign-in");
        assertThat(page.textContent(".notice[role=status]")).contains(InventedShop.NAME);
        visit.look("sign-in");

        page.fill("#name", InventedShop.OWNER);
        page.fill("#password", "not the password at all");
        page.click("main button.main");
        assertThat(page.textContent("#summary")).contains("do not belong together");
        assertThat(page.inputValue("#name")).isEqualTo(InventedShop.OWNER);
        visit.look("sign-in-refused");

        page.fill("#password", InventedShop.PASSWORD);
        page.click("main button.main");
        assertThat(page.textContent("h1")).isEqualTo("Bench and shelf");
        visit.look("home");
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        visit.look("home-dark");

        assertThat(visit.open("/setup").textContent("h1")).isEqualTo("There is nothing here");
        visit.look("not-found-dark");
    }

    @Test
    void showsThePasswordOnRequest(Browser.Visit visit) {
        Page page = visit.open("/setup");
        page.fill("#password", "anything");
        page.click("[data-reveal] button");
        assertThat(page.getAttribute("#password", "type")).isEqualTo("text");
        page.click("[data-reveal] button");
        assertThat(page.getAttribute("#password", "type")).isEqualTo("password");
    }

    private static void fill(Page page, String code, String password) {
        page.fill("#code", code);
        page.fill("#ownerName", InventedShop.OWNER);
        page.fill("#password", password);
        page.fill("#shopName", InventedShop.NAME);
        page.selectOption("#timeZone", "America/New_York");
        page.fill("#hourlyRate", "20");
        page.fill("#firstDay", "2025-01-01");
    }
}
