package patinary.whole;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.SelectOption;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import patinary.testing.Browser;

/** What her hands do on the pages of {@link WholeJobIT}. */
final class Hands {

    private static final String WAITING = "() => window.outbox.all().then(entries => entries.length)";

    private Hands() {}

    /** A phone that is signed in as the visit is. */
    static Page phone(Browser.Visit visit) {
        String start = visit.open("/").url();
        return visit.context()
                .browser()
                .newContext(new NewContextOptions()
                        .setIsMobile(true)
                        .setHasTouch(true)
                        .setViewportSize(390, 844)
                        .setBaseURL(start)
                        .setStorageState(visit.context().storageState()))
                .newPage();
    }

    /** The one main button of the page. */
    static void save(Page page) {
        page.click("main button.main");
    }

    static void choose(Page page, String list, String label) {
        page.selectOption(list, new SelectOption().setLabel(label));
    }

    static void see(Page page, String name) {
        Browser.picture(page, Path.of("target", "screenshots", name + ".png"));
    }

    /** What the strip of the phone says, once it is saved or sent: that may take a while where much else goes on. */
    static void told(Page page, String words) {
        assertThat(page.locator(".outbox-said"))
                .containsText(words, new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
    }

    /** Waits until the shop has all that was kept on the phone, and the form takes a tap again: a second one at once is no entry. */
    static void sent(Page page) {
        page.waitForCondition(() -> page.evaluate(WAITING).equals(0));
        page.waitForFunction("() => !document.querySelector('form[data-saving]')");
    }

    static void thing(Page page, String price, String what, int many) {
        Locator thing = page.locator("[data-thing]").last();
        thing.locator("[name$='.price']").fill(price);
        thing.locator("[data-fold] > summary").click();
        thing.locator("[name$='.what']").fill(what);
        thing.locator("[name$='.count']").fill(String.valueOf(many));
    }

    static void another(Page page, String price, String what, int many) {
        page.click("button[value=add]");
        thing(page, price, what, many);
    }

    static void till(Page page, String source, String day, String tax) {
        page.fill("#newSource", source);
        page.click("label.chip:has(input[name=day][value=OTHER])");
        page.fill("#date", day);
        page.fill("#tax", tax);
        page.click("button[data-exact]");
        choose(page, "#paidWith", "Cash box");
    }

    static void supply(Page page, String name, String line, String measured, String pack, String holds) {
        page.navigate("/supplies/new");
        page.fill("#name", name);
        if (!page.isVisible("#newLine")) {
            page.click("details:has(#newLine) > summary");
        }
        page.fill("#newLine", line);
        page.check("input[name=dimension][value=" + measured + "]");
        page.fill("[id='packs0.name']", pack);
        page.fill("[id='packs0.quantity']", holds);
        save(page);
    }

    static void jar(Page page, int line, String pack, String price) {
        String field = "[name='lines[" + line + "].";
        page.selectOption(field + "kind']", "SUPPLY");
        choose(page, field + "supply']", pack);
        page.fill(field + "price']", price);
    }

    /** @param which of several pieces of that name */
    static void tap(Page page, String piece, int which) {
        page.locator("[data-piece]:has-text('" + piece + "') > label:first-child")
                .nth(which)
                .click();
    }

    static void use(Page page, String supply, String quantity) {
        Locator use = page.locator("[data-use]:has-text('" + supply + "')").first();
        use.locator("> .tap").click();
        Locator typed = use.locator("[name$='.quantity']");
        if (!typed.isVisible()) {
            use.locator("summary").first().click();
        }
        typed.fill(quantity);
    }

    /** Keeps an entry of an earlier day; the page is as it was before it. */
    static void keep(Page page, String done, String minutes, String day) {
        page.fill("#done", done);
        page.fill("#minutes", minutes);
        page.check("input[name=day][value=OTHER]");
        page.fill("#date", day);
        page.click(".now-save button");
        told(page, "written down");
        assertThat(page.locator("#minutes")).hasValue("");
        sent(page);
    }

    static void count(Page page, String supply, String left, String settled) {
        page.click("main table a:has-text('" + supply + "')");
        page.click("main a[href$='/count']");
        page.fill("#quantity", left);
        page.fill("#date", "2025-03-17");
        save(page);
        assertThat(page.locator("main")).containsText(settled);
        page.click("main a[href='/supplies']");
    }

    static void offer(Page page, String codes, String together, String title, String price, boolean everywhere) {
        page.navigate("/offers/new");
        page.fill("#codes", codes);
        page.check("input[name=together][value=" + together + "]");
        page.fill("#title", title);
        page.fill("#price", price);
        page.fill("#date", "2025-03-18");
        page.check("label:text-is('Stall')");
        if (everywhere) {
            page.check("label:text-is('Web shop')");
        }
        save(page);
    }

    static void sold(Page page, String what) {
        page.fill("#date", "2025-03-22");
        page.click(".stall-act button");
        told(page, "Sold: " + what);
        sent(page);
    }

    /** The files of a packed folder by their names in it. */
    static Map<String, byte[]> unpacked(Path file) throws IOException {
        Map<String, byte[]> folder = new TreeMap<>();
        try (InputStream in = Files.newInputStream(file);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (!entry.isDirectory()) {
                    folder.put(entry.getName().replaceFirst("^2025/", ""), zip.readAllBytes());
                }
            }
        }
        return folder;
    }

    static String sum(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    static String text(Map<String, byte[]> folder, String name) {
        return new String(folder.get(name), StandardCharsets.UTF_8);
    }
}
