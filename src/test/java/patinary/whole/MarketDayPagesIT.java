package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;

/** Labels, places and a market day as eyes and thumbs meet them. The shop and its goods are invented. */
@ShopTest
@ExtendWith(Browser.class)
class MarketDayPagesIT {

    /** What is pressed and is smaller than 44 by 44 pixels, as EveryPageIT asks. */
    private static final String SMALL = """
            () => [...document.querySelectorAll('main button, main .acts a, main .touch, main .sheet-cell')]
              .map(e => [e.outerHTML.slice(0, 90), e.getBoundingClientRect().width, e.getBoundingClientRect().height])
              .filter(([, w, h]) => w < 44 || h < 43.5)
              .map(String)""";

    @Autowired
    private ApplicationContext program;

    private Trestle trestle;
    private UUID tray;

    @BeforeEach
    void stock() {
        trestle = new Trestle(program);
        tray = trestle.offered("Tin tray with a painted harbour and a worn rim", "Shelf A", 4500);
        for (int i = 0; i < 5; i++) {
            trestle.offered("Enamel jug", i % 2 == 0 ? "Blue crate" : "Under the bench", 1250 + 300L * i);
        }
        trestle.piece("Oak box", "Loft");
    }

    @Test
    void thePagesAreFitForEverybody(Browser.Visit visit) {
        visit.signIn();
        for (List<String> page : List.of(
                List.of("/labels", "labels"),
                List.of("/labels/sheet?codes=P0001", "labels-sheet"),
                List.of("/labels/sheet?codes=P0001&grid=a4-5x13", "labels-sheet-65"),
                List.of("/labels/sheet.pdf?codes=P0099&grid=a4-3x8", "labels-sheet-wrong"),
                List.of("/labels/grids", "labels-grids"),
                List.of("/labels/grids/new", "labels-grid"),
                List.of("/p/P0001", "scanned"),
                List.of("/p/P0099", "scanned-unknown"),
                List.of("/places", "places"),
                List.of("/places/one?place=Blue crate", "places-one"),
                List.of("/places/move", "places-move"),
                List.of("/market-days", "market-days-none"),
                List.of("/market-days/new", "market-days-new"))) {
            visit.open(page.get(0));
            visit.look(page.get(1));
            assertThat((List<?>) visit.page().evaluate(SMALL)).as(page.get(0)).isEmpty();
        }
    }

    /** A phone that scans a label is often signed out; it asks once and shows what was scanned. */
    @Test
    void aScanLeadsThroughTheSignInAndBack(Browser.Visit visit) {
        Page page = visit.open("/p/p1");
        assertThat(page.content()).doesNotContain("Tin tray");
        page.fill("#name", InventedShop.OWNER);
        page.fill("#password", InventedShop.PASSWORD);
        page.click("main button[type=submit]");
        page.waitForURL("**/p/p1");
        assertThat(page.textContent("h1")).startsWith("Tin tray");
        page.click(".acts .main");
        assertThat(page.inputValue("#price")).isEqualTo("45.00");
    }

    @Test
    void aListIsPackedWithTheThumbAndPrinted(Browser.Visit visit) {
        Page phone = phone(visit);
        phone.navigate(visit.page().url() + "market-days/new");
        phone.fill("#title", "Lantern fair");
        phone.fill("#day", "2025-05-03");
        phone.tap("main button[type=submit]");
        phone.waitForURL("**/add");
        phone.locator(".pick label").all().forEach(label -> label.tap());
        picture(phone, "market-days-add");
        phone.tap("text=Add to the list");
        phone.waitForURL("**/market-days/*");
        String list = phone.url();
        phone.locator("#piece-" + tray).getByText("Pack", exact()).tap();
        phone.waitForURL("**#piece-" + tray);
        assertThat(trestle.place(tray)).isEqualTo("Lantern fair");
        assertThat(phone.locator("#piece-" + tray).isVisible()).isTrue();
        assertThat(phone.locator("dl.facts").textContent()).contains("1 of 6");
        phone.locator("#piece-" + tray).getByText("Came home").tap();
        phone.locator("#piece-" + tray).getByText("Not home", exact()).waitFor();
        assertThat(trestle.place(tray)).isEqualTo("Shelf A");
        assertThat((List<?>) phone.evaluate(SMALL)).isEmpty();
        picture(phone, "market-day-phone");

        visit.open(list.replaceFirst("https?://[^/]+", ""));
        visit.look("market-day");
        visit.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(visit.page().locator(".to-tick").first().isVisible()).isTrue();
        assertThat(visit.page().locator(".turns button").first().isVisible()).isFalse();
        assertThat(visit.page().locator(".not-printed").first().isVisible()).isFalse();
        picture(visit.page(), "market-day-print");
        visit.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
        visit.open("/market-days");
        visit.look("market-days");
        visit.open(list.replaceFirst("https?://[^/]+", "") + "/edit");
        visit.look("market-days-edit");
    }

    private static Locator.GetByTextOptions exact() {
        return new Locator.GetByTextOptions().setExact(true);
    }

    private static void picture(Page page, String name) {
        Browser.picture(page, java.nio.file.Path.of("target", "screenshots", name + ".png"));
    }

    private static Page phone(Browser.Visit visit) {
        visit.signIn();
        BrowserContext phone = visit.context()
                .browser()
                .newContext(new NewContextOptions()
                        .setIsMobile(true)
                        .setHasTouch(true)
                        .setViewportSize(390, 844)
                        .setStorageState(visit.context().storageState()));
        return phone.newPage();
    }
}
