package patinary.buying;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import javax.imageio.ImageIO;
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

    private static final String WAITING = "() => window.outbox.all().then(entries => entries.length)";
    /** What the page says about a kind once the list has come. */
    private static final String ADVISED = """
            ([kind, advice]) => {
              document.dispatchEvent(new CustomEvent("lists:ready", { detail: { advice } }));
              const chosen = document.querySelector('[name="things[0].kind"]');
              chosen.value = kind;
              chosen.dispatchEvent(new Event("input", { bubbles: true }));
              const line = document.querySelector("[data-advice]");
              return line.hidden ? "" : line.textContent;
            }""";

    @Autowired
    private JdbcClient jdbc;

    private int taps;

    @BeforeEach
    void fill() {
        Shelf.fill(jdbc);
        KINDS.forEach(kind -> jdbc.sql("insert into object_kind (id, name, version) values (?, ?, 0)")
                .params(UUID.fromString(kind(kind)), kind)
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
        page.locator("[data-kinds] button").last().click();
        page.locator("input[type=file]").last().setInputFiles(picture());
        assertThat(page.locator("[data-photo] img").last()).isVisible();
        String piece = page.locator("[name='things[1].piece']").inputValue();
        page.fill("#tillTotal", "6.00");
        page.reload();
        assertThat(page.locator("[data-thing]")).hasCount(2);
        assertThat(page.locator("[data-photo] img").last()).isVisible();
        assertThat(page.locator("[name='things[0].price']")).hasValue("4.99");
        assertThat(page.locator("[data-running]")).hasText("2 things: $3.99");
        assertThat(page.locator("[data-difference]")).containsText("$2.01 more");
        page.click("button.big");
        assertThat(page.locator("[data-difference]")).containsText("Say what the difference is");
        visit.look("buy-difference");
        page.check("#settle-OPEN");
        assertThat(page.locator("[data-difference] .error")).hasCount(0);
        visit.look("buy-photo");
        visit.context().setOffline(true);
        page.click("button.big");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
        assertThat(page.locator("[data-thing]")).hasCount(1);
        assertThat(price(page)).hasValue("");
        assertThat(sum("select count(*) from receipt")).isZero();
        assertThat(page.evaluate(WAITING)).isEqualTo(2);
        visit.context().setOffline(false);
        // Only an empty outbox says that nothing is under way any more: a reload would cut it off, and it would come
        // again.
        page.waitForCondition(() -> page.evaluate(WAITING).equals(0));
        assertThat(jdbc.sql("select piece_id, stage from photo").query().singleRow())
                .containsEntry("piece_id", UUID.fromString(piece))
                .containsEntry("stage", "BEFORE");
        page.reload();
        assertThat(sum("select sum(till_total_minor) from receipt")).isEqualTo(600);
        assertThat(price(page)).hasValue("");
        visit.look("buy");
        visit.open("/buy/percents");
        visit.look("buy-percents");
    }

    /** The list is an invented one: the figure stands with what it rests on, and with words where that is little. */
    @Test
    void tellsWhatToPayAndWhatItRestsOn(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/buy");
        List<Map<String, Object>> advice = List.of(
                Map.of("kind", kind("Lamp"), "most", 1250, "sold", 14, "few", false, "words", "From 14 sold."),
                Map.of("kind", kind("Frame"), "most", 300, "sold", 1, "few", true, "words", "Only one sold so far."),
                Map.of("kind", kind("Tray"), "sold", 9, "few", false, "words", "Not worth buying."));
        assertThat(advised(page, "Lamp", advice)).isEqualTo("At most $12.50, from 14 sold.");
        assertThat(advised(page, "Frame", advice)).isEqualTo("At most $3.00, from 1 sold. Only one sold so far.");
        assertThat(advised(page, "Tray", advice)).isEqualTo("Not worth buying.");
        assertThat(advised(page, "Bench seat", advice)).isEqualTo("");
    }

    private static Object advised(Page page, String kind, List<Map<String, Object>> advice) {
        return page.evaluate(ADVISED, List.of(kind(kind), advice));
    }

    private static String kind(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .toString();
    }

    private static FilePayload picture() {
        BufferedImage image = new BufferedImage(600, 800, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 800; y++) {
            for (int x = 0; x < 600; x++) {
                image.setRGB(x, y, x > 150 && x < 450 && y > 300 ? 0x7a4a2a : 0xd9cfc0);
            }
        }
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return new FilePayload("find.png", "image/png", file.toByteArray());
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
