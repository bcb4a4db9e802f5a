package patinary.whole;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/**
 * A day in a cellar and at a market: each of the three pages is opened once with reception, then the sign-in is over and
 * the reception gone; what is recorded is sent after the next sign-in, each thing once. All goods are invented.
 */
@ShopTest
@ExtendWith(Browser.class)
class WithoutReceptionIT {

    private static final UUID CASH = UUID.fromString("00000000-0000-4000-8000-00000000e001");
    private static final UUID STALL = UUID.fromString("00000000-0000-4000-8000-00000000e002");
    private static final UUID SOURCE = UUID.fromString("00000000-0000-4000-8000-00000000e003");
    private static final UUID TRAY = UUID.fromString("00000000-0000-4000-8000-00000000e004");
    private static final UUID LAMP = UUID.fromString("00000000-0000-4000-8000-00000000e005");
    private static final String READY = """
            () => caches.keys().then(async names => {
              const pages = await Promise.all(names.map(name => caches.open(name).then(shell => shell.keys())));
              return navigator.serviceWorker.controller !== null && window.outbox.lists().paid !== undefined
                && pages.flat().some(page => page.url.endsWith("/stall"));
            })""";
    private static final String WAITING = "() => window.outbox.all().then(all => all.length)";
    private static final String STATES = "() => window.outbox.all().then(all => all.map(each => each.state).join())";
    private static final String KEY = "() => window.outbox.all().then(([first]) => first.key)";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    private StockedBench bench;

    @BeforeEach
    void shop() {
        bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
        program.getBean(MoneyPlaces.class).save(new MoneyPlace(CASH, "Cash box", MoneyPlace.Kind.CASH));
        program.getBean(Channels.class).save(new Channel(STALL, "Stall", CASH, false, List.of()));
        change(
                "insert into source (id, name, note, resale_certificate, version) values (?, 'Hill Road barn', '', '', 0)",
                SOURCE);
        change("insert into object_kind (id, name, version) values (?, 'Tray', 0)", TRAY);
        change("insert into object_kind (id, name, version) values (?, 'Lamp', 0)", LAMP);
        jdbc.sql("insert into quick_percent (id, line, name, percent) values (?, 1, 'blue tags', ?)")
                .params(UUID.randomUUID(), new BigDecimal("50"))
                .update();
    }

    /** Half of 4.99 is 2.495, rounded half up 2.50 off: 2.49. With 3.00 for the lamp 5.49. */
    @Test
    void twoThingsBoughtInACellarAreOneReceipt(Browser.Visit visit) {
        Page page = cellar(visit, "/buy");
        buyTwo(page);
        visitSeen(page, "buy-offline");
        page.click("button.big");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
        assertThat(page.locator("[data-thing]")).hasCount(1);
        assertThat(page.locator("[name='things[0].price']")).hasValue("");
        assertThat(page.locator("#tillTotal")).hasValue("");
        page.reload();
        assertThat(page.locator("[name='things[0].price']")).hasValue("");
        assertThat(page.locator(".outbox-waiting")).containsText("1 waiting to be sent");
        assertThat(number("select count(*) from receipt where source_id is not null"))
                .isZero();

        backAndSignedIn(page, "/buy");
        assertThat(
                        texts(
                                "select k.name from receipt_piece rp join piece p on p.id = rp.piece_id join object_kind k on k.id = p.kind_id order by rp.line"))
                .containsExactly("Tray", "Lamp");
        assertThat(number("select till_total_minor from receipt where source_id = '" + SOURCE + "'"))
                .isEqualTo(549);
        assertThat(number("select count(*) from receipt_line where kind = 'PIECES' and discount_percent = 50"))
                .isEqualTo(1);
        assertThat(number("select -sum(amount_minor) from posting where account = 'MONEY'"))
                .isEqualTo(549);
        once("receipt where source_id is not null");
        page.context().close();
    }

    /** The shop no longer knows a kind that the phone's list still has. */
    @Test
    void aRefusedPurchaseComesBackAsItWasTypedAndIsStoredOnceMended(Browser.Visit visit) {
        Page page = cellar(visit, "/buy");
        buyTwo(page);
        page.click("button.big");
        until(page, WAITING, 1);
        Object key = page.evaluate(KEY);
        change("delete from object_kind where id = ?", LAMP);
        page.context().setOffline(false);
        signInThroughTheStrip(page, "/buy");
        until(page, STATES, "heed");
        assertThat(number("select count(*) from receipt where source_id is not null"))
                .isZero();

        assertThat(page.locator(".outbox-waiting")).containsText("needs your attention");
        page.click(".outbox-waiting");
        assertThat(page.locator(".reasons li")).hasCount(1);
        assertThat(page.locator(".reasons li"))
                .containsText("Thing 2 (3): its kind is no longer in the list. Choose another");
        assertThat(page.locator("#waiting-send")).isHidden();
        visitSeen(page, "buy-refused");
        page.click("text=Mend");
        assertThat(page.locator("[data-thing]")).hasCount(2);
        assertThat(page.locator("[name='things[0].price']")).hasValue("4.99");
        assertThat(page.locator("[name='things[1].price']")).hasValue("3");
        assertThat(page.locator("[name='things[0].percent'][value='50']")).isChecked();
        assertThat(page.locator("[name='things[0].kind']")).hasValue(TRAY.toString());
        assertThat(page.locator("#tillTotal")).hasValue("5.49");
        assertThat(page.locator("#source")).hasValue(SOURCE.toString());
        visitSeen(page, "buy-mend");
        page.click("button.big");
        until(page, WAITING, 0);
        assertThat(texts("select cast(id as varchar(36)) from receipt where source_id is not null"))
                .containsExactly(String.valueOf(key));
        once("receipt where source_id is not null");
        page.context().close();
    }

    @Test
    void whatIsSoldAtAMarketIsMarkedAndBecomesOneSale(Browser.Visit visit) throws Exception {
        offered("P0001", "45");
        offered("P0002", "12.50");
        Page page = cellar(visit, "/stall");
        assertThat(page.locator("#stall-list [data-ware]")).hasCount(2);
        sell(page, "P0001");
        assertThat(page.locator("#stall-sale")).isHidden();
        assertThat(page.locator("[data-codes=P0001] .word")).hasText("Sold, waiting to be sent");
        assertThat(page.locator("[data-codes=P0002] .word")).isHidden();
        visitSeen(page, "stall-offline");
        page.reload();
        assertThat(page.locator("[data-codes=P0001] .word")).hasText("Sold, waiting to be sent");
        assertThat(page.locator("#stall-waiting")).containsText("45.00");
        assertThat(number("select count(*) from sale")).isZero();

        backAndSignedIn(page, "/stall");
        assertThat(texts("select p.code from sale_piece sp join piece p on p.id = sp.piece_id"))
                .containsExactly("P0001");
        assertThat(number("select price_minor from sale_line")).isEqualTo(4500);
        assertThat(number("select sum(amount_minor) from posting where account = 'MONEY'"))
                .isEqualTo(4500);
        once("sale");
        page.context().close();
    }

    @Test
    void thePieceSoldOnTwoPhonesIsOneSaleAndTheOtherPhoneIsTold(Browser.Visit visit) throws Exception {
        offered("P0001", "45");
        Page mine = cellar(visit, "/stall");
        Page theirs = cellar(visit, "/stall");
        sell(mine, "P0001");
        sell(theirs, "P0001");
        backAndSignedIn(mine, "/stall");
        theirs.context().setOffline(false);
        signInThroughTheStrip(theirs, "/stall");
        until(theirs, STATES, "heed");
        once("sale");
        theirs.click(".outbox-waiting");
        assertThat(theirs.locator(".reasons")).containsText("P0001 was already sold on");
        visitSeen(theirs, "stall-twice");
        theirs.click("text=Mend");
        assertThat(theirs.locator("#stall-twice")).isVisible();
        assertThat(theirs.locator("#price")).hasValue("45.00");
        theirs.navigate(theirs.url().replaceFirst("/stall.*", "/waiting"));
        theirs.click("[data-act=discard]");
        theirs.click("[data-act=yes]");
        until(theirs, WAITING, 0);
        once("sale");
        mine.context().close();
        theirs.context().close();
    }

    /** The clock is set back on the phone itself by 25 minutes, as if so much time had gone by. */
    @Test
    void workInACellarIsOneBenchEntryWithTheTimeOfTheClock(Browser.Visit visit) {
        Page page = cellar(visit, "/bench/now");
        String paint = "[data-use][data-supply='" + bench.paint + "'] ";
        page.tap("button[value=clock-go]:visible");
        page.tap("label:has(#piece-" + bench.box + ")");
        page.tap("label:has(#piece-" + bench.crate + ")");
        page.tap(paint + "> .tap");
        page.tap(paint + ".tap:has([value=dab])");
        page.tap(paint + "[data-step='1']");
        page.tap("label:has(#ready-" + bench.box + ")");
        page.evaluate("""
                () => { const name = Object.keys(localStorage).find(key => key.startsWith("bench-clock-") && localStorage.getItem(key) !== "null");
                  const clock = JSON.parse(localStorage.getItem(name));
                  localStorage.setItem(name, JSON.stringify({ ...clock, since: clock.since - 25 * 60000 })); }""");
        page.reload();
        assertThat(page.locator("[data-clock-words]")).containsText("25 min");
        assertThat(page.locator("#piece-" + bench.crate)).isChecked();
        assertThat(page.locator(paint + "[value=dab]")).isChecked();
        visitSeen(page, "bench-offline");
        page.tap(".now-save button");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
        assertThat(page.locator("#piece-" + bench.crate)).not().isChecked();
        assertThat(page.locator("#minutes")).hasValue("");
        assertThat(page.locator("button[value=clock-go]:visible")).hasCount(1);
        page.reload();
        assertThat(page.locator("#piece-" + bench.crate)).not().isChecked();
        assertThat(page.locator(".outbox-waiting")).containsText("1 waiting to be sent");
        assertThat(number("select count(*) from bench_entry")).isZero();

        backAndSignedIn(page, "/bench/now");
        assertThat(number("select minutes from bench_entry")).isEqualTo(25);
        assertThat(texts("select typed from bench_use")).containsExactly("2 dabs");
        assertThat(texts("select p.title from bench_piece b join piece p on p.id = b.piece_id where b.ready"))
                .containsExactly("Small box");
        assertThat(number("select count(*) from bench_piece")).isEqualTo(2);
        once("bench_entry");
        page.context().close();
    }

    private static void buyTwo(Page page) {
        page.fill("[name='things[0].price']", "4.99");
        page.tap("[data-percents] .chip:has-text('blue')");
        page.tap("[data-kinds] button:has-text('Tray')");
        page.tap("button[value=add]");
        page.fill("[name='things[1].price']", "3");
        page.tap("[data-thing]:last-child [data-kinds] button:has-text('Lamp')");
        page.selectOption("#source", SOURCE.toString());
        page.selectOption("#paidWith", new com.microsoft.playwright.options.SelectOption().setLabel("Cash box"));
        page.tap("button[data-exact]");
        assertThat(page.locator("#tillTotal")).hasValue("5.49");
    }

    private static void sell(Page page, String code) {
        page.tap("[data-codes=" + code + "]");
        page.tap(".stall-act button");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
    }

    /** A phone that was on the page once with reception; now the sign-in is over and the reception gone. */
    private static Page cellar(Browser.Visit visit, String path) {
        String start = visit.open("/sign-in").url().replaceFirst("/sign-in.*", "");
        BrowserContext phone = visit.context()
                .browser()
                .newContext(new NewContextOptions()
                        .setIsMobile(true)
                        .setHasTouch(true)
                        .setViewportSize(390, 844)
                        .setBaseURL(start));
        Page page = phone.newPage();
        page.navigate("/sign-in");
        signIn(page);
        page.waitForURL(start + "/");
        page.navigate(path);
        Browser.toStay(page);
        until(page, READY, true);
        phone.clearCookies();
        phone.setOffline(true);
        page.navigate(path);
        assertThat(page.locator(".head a[href*=sign-in]")).isVisible();
        return page;
    }

    private static void signIn(Page page) {
        page.fill("#name", InventedShop.OWNER);
        page.fill("#password", InventedShop.PASSWORD);
        page.click("main button[type=submit]");
    }

    private static void backAndSignedIn(Page page, String path) {
        page.context().setOffline(false);
        signInThroughTheStrip(page, path);
        until(page, WAITING, 0);
        assertThat(page.locator(".outbox-waiting")).isHidden();
    }

    private static void signInThroughTheStrip(Page page, String path) {
        assertThat(page.locator(".outbox-waiting")).containsText("Sign in to send 1 entry");
        page.click(".outbox-waiting");
        signIn(page);
        page.waitForURL("**" + path);
    }

    /** There is one document of the kind, and one key for what the phone brought. */
    private void once(String table) {
        assertThat(number("select count(*) from " + table)).isEqualTo(1);
        assertThat(number("select count(*) from delivery where href <> ''")).isEqualTo(1);
    }

    private static void visitSeen(Page page, String name) {
        Browser.picture(page, java.nio.file.Path.of("target", "screenshots", name + ".png"));
    }

    private void offered(String code, String price) throws Exception {
        mvc.perform(post("/offers/new")
                        .with(InventedShop.owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-02")
                        .param("codes", code)
                        .param("price", price)
                        .param("channels", STALL.toString()))
                .andExpect(status().isSeeOther());
    }

    private static void until(Page page, String asked, Object expected) {
        page.waitForCondition(() -> {
            try {
                return expected.equals(page.evaluate(asked));
            } catch (PlaywrightException onTheWay) {
                return false;
            }
        });
    }

    private void change(String sql, UUID id) {
        jdbc.sql(sql).param(id).update();
    }

    private long number(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }

    private List<String> texts(String sql) {
        return jdbc.sql(sql).query(String.class).list();
    }
}
