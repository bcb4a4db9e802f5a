package patinary.vitals;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ElementHandle;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.LoadState;
import java.io.IOException;
import java.io.InputStream;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.util.FileSystemUtils;
import patinary.testing.JarProgram;

/**
 * Opens the phone pages of the packaged program as a phone in a shop would for the first time: over HTTPS of the
 * program's own, a {@link SlowLink}, a processor slowed four times; then touches what is there. Prints a table for
 * docs/benchmarks.md and ends with 1 where a bound is not kept. {@code .ci/measure-phone [RUNS]} runs it.
 */
final class MeasurePhone {

    private static final String HOST = "workroom.local";
    private static final int SLOWER = 4;
    private static final int MOST_TAPS = 12;
    private static final String TOUCHABLE = "main button:not([type=submit]), main summary, main input[type=text], "
            + "main input[type=radio], main input[type=checkbox], main textarea";

    private final Browser browser;
    private final int port;
    private final List<Cookie> signedIn;
    private final String watch;

    private MeasurePhone(Browser browser, int port, List<Cookie> signedIn) throws IOException {
        this.browser = browser;
        this.port = port;
        this.signedIn = signedIn;
        try (InputStream script = MeasurePhone.class.getResourceAsStream("watch.js")) {
            this.watch = new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    public static void main(String[] arguments) throws Exception {
        int runs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 9;
        Path folder = Files.createTempDirectory("patinary-measure");
        System.setProperty(
                "patinary.jar",
                Path.of("target", "patinary.jar").toAbsolutePath().toString());
        int secure = freePort();
        boolean kept;
        try (JarProgram program = JarProgram.start(folder.resolve("log.txt"), settings(folder, secure));
                SlowLink link = new SlowLink(secure);
                Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")))) {
            // Only this machine is spoken to; the authority itself is tried by HttpsIT.
            Browser browser = patinary.testing.Browser.launch(
                    playwright, "--host-resolver-rules=MAP " + HOST + " 127.0.0.1", "--ignore-certificate-errors");
            kept = measure(browser, link.port(), secure, runs);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
        System.exit(kept ? 0 : 1);
    }

    private static boolean measure(Browser browser, int slow, int fast, int runs) throws IOException {
        try (BrowserContext context = browser.newContext()) {
            Page page = signIn(context, "https://" + HOST + ":" + fast);
            List<String> pages = PhonePages.ALL;
            List<Cookie> cookies = context.cookies();
            MeasurePhone warm = new MeasurePhone(browser, fast, cookies);
            pages.forEach(path -> warm.open(path));
            MeasurePhone measured = new MeasurePhone(browser, slow, cookies);
            Map<String, List<Vitals>> results = new LinkedHashMap<>();
            for (int run = 0; run < runs; run++) {
                for (String path : pages) {
                    results.computeIfAbsent(path, first -> new ArrayList<>()).add(measured.open(path));
                }
            }
            return VitalsTable.print(results);
        }
    }

    private static Page signIn(BrowserContext context, String start) {
        Page page = context.newPage();
        page.navigate(start + "/sign-in");
        page.fill("#name", patinary.exchange.DemoData.OWNER);
        page.fill("#password", patinary.exchange.DemoData.PASSWORD);
        page.click("main button[type=submit]");
        page.waitForURL(start + "/");
        return page;
    }

    private Vitals open(String path) {
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setDeviceScaleFactor(3)
                .setIsMobile(true)
                .setHasTouch(true))) {
            context.addCookies(signedIn);
            context.addInitScript(watch);
            Page page = context.newPage();
            Traffic traffic = new Traffic(page);
            JsonObject rate = new JsonObject();
            rate.addProperty("rate", SLOWER);
            context.newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate);
            page.navigate("https://" + HOST + ":" + port + path);
            page.waitForLoadState(LoadState.NETWORKIDLE);
            settle(page);
            long bytes = traffic.bytes();
            int requests = traffic.requests();
            List<Traffic.Asked> photos = List.copyOf(traffic.photos());
            int taps = touch(page);
            return new Vitals(
                    number(page, "paint"),
                    number(page, "shift"),
                    number(page, "answer"),
                    bytes,
                    requests,
                    photos.stream().mapToLong(Traffic.Asked::bytes).sum(),
                    photos.size(),
                    taps);
        }
    }

    /** Touches what does not lead away, types into what is to be typed, and at last sends what a phone keeps by itself. */
    private static int touch(Page page) {
        int taps = 0;
        for (ElementHandle thing : page.querySelectorAll(TOUCHABLE)) {
            if (taps < MOST_TAPS && thing.isVisible() && thing.isEnabled()) {
                thing.evaluate("thing => (thing.closest('label') || thing).scrollIntoView({block: 'center'})");
                thing.tap(new ElementHandle.TapOptions().setForce(true));
                if (thing.evaluate("thing => thing.matches('input[type=text], textarea')")
                        .equals(true)) {
                    page.keyboard().type("4");
                }
                taps++;
                settle(page);
            }
        }
        Locator kept = page.locator("form[data-outbox] button[type=submit]:not([aria-hidden])")
                .first();
        if (kept.count() > 0 && kept.isVisible()) {
            kept.tap();
            taps++;
            settle(page);
        }
        return taps;
    }

    /** Two frames and the reports about them have passed. */
    private static void settle(Page page) {
        page.evaluate(
                "new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 60))))");
    }

    private static double number(Page page, String name) {
        return ((Number) page.evaluate("window.vitals." + name)).doubleValue();
    }

    private static List<String> settings(Path folder, int secure) {
        return List.of(
                "patinary.data=" + folder.resolve("data"),
                "patinary.demo=true",
                "patinary.https.names=" + HOST,
                "patinary.https.port=" + secure);
    }

    private static int freePort() throws IOException {
        try (ServerSocket free = new ServerSocket(0)) {
            return free.getLocalPort();
        }
    }
}
