package patinary.testing;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.opentest4j.TestAbortedException;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.test.context.junit.jupiter.SpringExtension;

/**
 * Drives the pages with a real browser: {@code @ExtendWith(Browser.class)} on a {@link ShopTest}, then a parameter of
 * type {@code Browser.Visit}.
 *
 * <p>Taken is {@code -Dpatinary.browser.path}, or {@code /usr/bin/chromium-headless-shell}, the same engine without a window
 * of its own and so twice as fast, or {@code /usr/bin/chromium}. Where there is no Chromium the tests are left out
 * with a loud message; with {@code -Dpatinary.browser=required} they fail.
 */
public final class Browser implements BeforeEachCallback, AfterEachCallback, ParameterResolver {

    private static final Path CHROMIUM = Path.of(System.getProperty("patinary.browser.path", "/usr/bin/chromium"));
    private static final Path SHELL = Path.of("/usr/bin/chromium-headless-shell");
    private static final Path LIGHT = Path.of(
            System.getProperty("patinary.browser.path", (Files.isExecutable(SHELL) ? SHELL : CHROMIUM).toString()));
    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--no-first-run");

    private static com.microsoft.playwright.@org.jspecify.annotations.Nullable Browser running;

    private final ExtensionContext.Namespace mine = ExtensionContext.Namespace.create(Browser.class);

    @Override
    public void beforeEach(ExtensionContext test) {
        need(test.getDisplayName());
        int port = ((WebServerApplicationContext) SpringExtension.getApplicationContext(test))
                .getWebServer()
                .getPort();
        test.getStore(mine).put("visit", new Visit(browser(), "http://localhost:" + port));
    }

    @Override
    public void afterEach(ExtensionContext test) {
        Visit visit = test.getStore(mine).remove("visit", Visit.class);
        if (visit != null) {
            visit.context.close();
        }
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
        return parameter.getParameter().getType() == Visit.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext test) {
        return test.getStore(mine).get("visit", Visit.class);
    }

    /** A whole browser of one's own, which also knows of installing, with more options. Fails where there is none. */
    public static com.microsoft.playwright.Browser launch(Playwright playwright, String... more) {
        return launch(playwright, CHROMIUM, more);
    }

    private static com.microsoft.playwright.Browser launch(Playwright playwright, Path program, String... more) {
        List<String> options = new ArrayList<>(QUIET);
        options.addAll(List.of(more));
        // A phone is where its shop is: on another clock its day may be one that has not come there.
        Map<String, String> surroundings = new HashMap<>(System.getenv());
        surroundings.put("TZ", "America/New_York");
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program)
                        .setHeadless(true)
                        .setEnv(surroundings)
                        .setArgs(options));
    }

    /** A stay in a program that runs outside the test, at an address like {@code https://workroom.local:8443}. */
    public static Visit visit(com.microsoft.playwright.Browser browser, String start) {
        return new Visit(browser, start);
    }

    /** Leaves the test out with a loud message, or fails where a browser is required, as the class says. */
    public static void need(String who) {
        if (Files.isExecutable(LIGHT)) {
            return;
        }
        String missing = "NO BROWSER at " + LIGHT + ": the pages of " + who + " are NOT tested";
        if ("required".equals(System.getProperty("patinary.browser"))) {
            throw new AssertionError(missing);
        }
        System.err.println(missing);
        throw new TestAbortedException(missing);
    }

    private static synchronized com.microsoft.playwright.Browser browser() {
        if (running == null) {
            Playwright playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            running = launch(playwright, LIGHT);
            Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        }
        return running;
    }

    /**
     * Waits until a page of the phone would also open without reception. A page that was loading while the worker began
     * stays without it, so it is opened once more: the guide promises the second visit.
     */
    public static Page toStay(Page page) {
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        if (Boolean.TRUE.equals(page.evaluate("() => navigator.serviceWorker.controller === null"))) {
            page.reload();
        }
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        return page;
    }

    /** Keeps a picture of the whole page for people to look at, where {@code -Dpatinary.pictures=true} asks for it. */
    public static void picture(Page page, Path file) {
        if (Boolean.getBoolean("patinary.pictures")) {
            page.screenshot(new Page.ScreenshotOptions().setPath(file).setFullPage(true));
        }
    }

    /** One person's stay in the shop, with her own cookies. */
    public static final class Visit {

        private static final double PATIENCE = 60_000;
        private static final Path PICTURES = Path.of("target", "screenshots");

        private final BrowserContext context;
        private final String start;
        private final Page page;

        Visit(com.microsoft.playwright.Browser browser, String start) {
            // Without motion: a colour on its way from one scheme to the other is neither.
            this.context = browser.newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                    .setBaseURL(start)
                    .setReducedMotion(ReducedMotion.REDUCE));
            this.start = start;
            context.setDefaultTimeout(PATIENCE);
            this.page = context.newPage();
        }

        public Page page() {
            return page;
        }

        public BrowserContext context() {
            return context;
        }

        /** Goes to a path of the shop. */
        public Page open(String path) {
            page.navigate(start + path);
            return page;
        }

        /** Goes to a page of the phone and comes back when it would also open without reception. */
        public Page openToStay(String path) {
            return toStay(open(path));
        }

        /** Signs the invented owner in, by the page. */
        public Page signIn() {
            open("/sign-in");
            page.fill("#name", InventedShop.OWNER);
            page.fill("#password", InventedShop.PASSWORD);
            page.click("main button[type=submit]");
            page.waitForURL(start + "/");
            return page;
        }

        /** Fails where the page has a finding of the accessibility rules, on a phone and on a laptop, or scrolls sideways; takes pictures. */
        public void look(String name) {
            for (Sight sight : Sight.values()) {
                page.setViewportSize(sight.width, sight.height);
                picture(page, PICTURES.resolve(name + "-" + sight.name().toLowerCase() + ".png"));
                // The narrow screen shows what the phone shows; it is there for the sideways scroll.
                List<String> findings = sight == Sight.NARROW ? List.of() : PageRules.broken(page);
                if (!findings.isEmpty()) {
                    throw new AssertionError(name + " on a " + sight + ": " + findings);
                }
                double overflow = ((Number) page.evaluate(
                                "document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                        .doubleValue();
                if (overflow > 0) {
                    throw new AssertionError(name + " on a " + sight + " scrolls sideways by " + overflow);
                }
            }
        }
    }

    /** The screens that pages are looked at on. */
    enum Sight {
        NARROW(320, 640),
        PHONE(390, 844),
        LAPTOP(1280, 800);

        final int width;
        final int height;

        Sight(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }
}
