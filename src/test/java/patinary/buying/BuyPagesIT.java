package patinary.buying;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.ShopCurrency;
import patinary.money.UnreadableAmount;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** Buying as a thumb does it. */
@ShopTest
@ExtendWith(Browser.class)
class BuyPagesIT {

    private static final List<String> KINDS = List.of("Bench seat", "Frame", "Lamp", "Side table", "Tray");
    /** Nets of one thing each, as the page counts them, or why it cannot. */
    private static final String NETS = """
            cases => {
              const form = document.querySelector("form[data-buy]");
              const things = () => [...form.querySelectorAll("[data-thing]")];
              while (things().length < cases.length) form.querySelector("button[value=add]").click();
              return cases.map((each, at) => {
                const thing = things()[at], set = (name, value) => thing.querySelector(`[name$="].${name}"]`).value = value;
                set("price", each[0]);
                set("otherPercent", each[1]);
                set("count", each[2]);
                thing.dispatchEvent(new Event("input", { bubbles: true }));
                return thing.dataset.minor;
              });
            }""";

    @Autowired
    private JdbcClient jdbc;

    private int taps;

    @BeforeEach
    void fill() {
        Shelf.fill(jdbc);
        KINDS.forEach(kind -> jdbc.sql("insert into object_kind (id, name, version) values (?, ?, 0)")
                .params(UUID.nameUUIDFromBytes(kind.getBytes(java.nio.charset.StandardCharsets.UTF_8)), kind)
                .update());
        percent(1, "50", "blue tags");
        percent(2, "25", "yellow tags");
    }

    @Test
    void takesTenThingsInFortyTaps(Browser.Visit visit) {
        visit.signIn();
        Page page = phone(visit);
        tap(page.locator("nav.bar a[href='/buy']"));
        assertThat(page.locator("h1")).hasText("Buy");
        tap(price(page));
        for (int i = 0; i < 10; i++) {
            if (i > 0) {
                tap(page.locator("button[value=add]"));
            }
            price(page).pressSequentially("4.99");
            Locator thing = page.locator("[data-thing]").last();
            tap(thing.locator(".chip", new Locator.LocatorOptions().setHasText(i % 2 == 0 ? "blue" : "yellow")));
            tap(thing.locator("[data-kinds] button").nth(i % KINDS.size()));
        }
        // Half of 4.99 leaves 2.49, a quarter off leaves 3.74 (1.2475 off, rounded 1.25): five of each are 31.15.
        assertThat(page.locator("[data-running]")).hasText("10 things: $31.15");
        tap(page.locator("button[data-exact]"));
        tap(page.locator("button.big"));
        assertThat(page.locator(".outbox-said")).containsText("recorded");
        System.out.println("Taps for ten things, each of another kind and percentage: " + taps);
        assertThat(taps).isLessThanOrEqualTo(40);
        assertThat(sum("select sum(till_total_minor) from receipt")).isEqualTo(3115);
        assertThat(sum("select count(*) from piece where kind_id is not null")).isEqualTo(10);
        assertThat(page.locator("[data-thing]")).hasCount(1);
        page.context().close();
    }

    @Test
    void countsAsTheServerDoes(Browser.Visit visit) {
        visit.signIn();
        Random random = new Random(7);
        for (String code : List.of("USD", "JPY", "KWD")) {
            ShopCurrency currency = ShopCurrency.ofCode(code);
            jdbc.sql("update shop set currency = ?, minor_digits = ?")
                    .params(code, currency.digits())
                    .update();
            Page page = visit.open("/buy");
            page.evaluate("localStorage.clear()");
            page.reload();
            List<List<String>> cases = cases(random, currency);
            Object nets = page.evaluate(NETS, cases);
            assertThat(nets)
                    .as(code)
                    .isEqualTo(cases.stream().map(one -> net(one, currency)).toList());
        }
    }

    @Test
    void outlivesAClosedPageAndWaitsForReceptionAndForHerAnswer(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/buy");
        price(page).fill("4.99");
        page.locator(".chip", new Page.LocatorOptions().setHasText("blue")).click();
        page.click("button[value=like]");
        price(page).fill("3");
        page.fill("#tillTotal", "6.00");
        page.reload();
        assertThat(page.locator("[data-thing]")).hasCount(2);
        assertThat(page.locator("[name='things[0].price']")).hasValue("4.99");
        assertThat(page.locator("[data-running]")).hasText("2 things: $3.99");
        assertThat(page.locator("[data-difference]")).containsText("$2.01 more");
        page.click("button.big");
        assertThat(page.locator("[data-difference]")).containsText("Say what the difference is");
        visit.look("buy-difference");
        page.check("#settle-OPEN");
        visit.context().setOffline(true);
        page.click("button.big");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
        assertThat(page.locator("[data-thing]")).hasCount(1);
        assertThat(price(page)).hasValue("");
        assertThat(sum("select count(*) from receipt")).isZero();
        visit.context().setOffline(false);
        assertThat(page.locator(".outbox-said")).containsText("recorded");
        page.reload();
        assertThat(sum("select sum(till_total_minor) from receipt")).isEqualTo(600);
        assertThat(price(page)).hasValue("");
        visit.look("buy");
        visit.open("/buy/percents");
        visit.look("buy-percents");
    }

    @Test
    void worksWithoutItsScript(Browser.Visit visit) {
        visit.signIn();
        try (BrowserContext plain = visit.context()
                .browser()
                .newContext(new NewContextOptions()
                        .setJavaScriptEnabled(false)
                        .setStorageState(visit.context().storageState()))) {
            Page page = plain.newPage();
            page.navigate(visit.page().url() + "buy");
            page.fill("[name='things[0].price']", "4.99");
            page.click("button[value=add]");
            page.fill("[name='things[1].price']", "2");
            page.fill("#tillTotal", "7.50");
            page.click("button.big");
            assertThat(page.locator("[data-difference]")).containsText("$0.51 more");
            assertThat(page.locator("[name='things[1].price']")).hasValue("2");
            page.check("#settle-TAX");
            page.click("button.big");
            page.waitForURL(address -> address.matches(".*/receipts/[0-9a-f-]{36}"));
        }
        assertThat(sum("select sum(amount_minor) from receipt_charge")).isEqualTo(51);
    }

    private Page phone(Browser.Visit visit) {
        BrowserContext phone = visit.context()
                .browser()
                .newContext(new NewContextOptions()
                        .setIsMobile(true)
                        .setHasTouch(true)
                        .setViewportSize(390, 844)
                        .setStorageState(visit.context().storageState()));
        Page page = phone.newPage();
        page.navigate(visit.page().url());
        return page;
    }

    private void tap(Locator target) {
        target.tap();
        taps++;
    }

    private static Locator price(Page page) {
        return page.locator("[name$='.price']").last();
    }

    private static List<List<String>> cases(Random random, ShopCurrency currency) {
        List<List<String>> cases = new ArrayList<>();
        for (String typed :
                List.of("1,234", "1.234", "12,5", ".5", "1,234.50", "1'000", "abc", "-3", "0", "12.34567")) {
            cases.add(List.of(typed, "", "1"));
        }
        while (cases.size() < 40) {
            String price = currency.plain(Amount.of(random.nextInt(100_000)));
            String percent = BigDecimal.valueOf(random.nextInt(1_000_001), 4).toPlainString();
            cases.add(List.of(price, random.nextBoolean() ? percent : "50", String.valueOf(1 + random.nextInt(9))));
        }
        return cases;
    }

    private static String net(List<String> typed, ShopCurrency currency) {
        try {
            Amount price = currency.parse(typed.get(0));
            if (price.isNegative()) {
                return "negative";
            }
            Percent percent = typed.get(1).isEmpty() ? null : Percent.of(typed.get(1));
            BigDecimal count = new BigDecimal(typed.get(2));
            return String.valueOf(
                    new ReceiptLine(1, LineKind.HOME, "", count, price, percent, null, false, null, null, null)
                            .net()
                            .minor());
        } catch (UnreadableAmount unreadable) {
            return Map.of("tooManyDecimals", "decimals")
                    .getOrDefault(
                            unreadable.messageKey().substring(12),
                            unreadable.messageKey().substring(12));
        }
    }

    private void percent(int line, String percent, String name) {
        jdbc.sql("insert into quick_percent (id, line, name, percent) values (?, ?, ?, ?)")
                .params(UUID.randomUUID(), line, name, new BigDecimal(percent))
                .update();
    }

    private long sum(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
