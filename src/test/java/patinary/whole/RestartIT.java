package patinary.whole;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import patinary.testing.Browser;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;
import patinary.testing.Visitor;

/**
 * A purchase waits in a real browser while the packaged program is gone, killed without warning. It comes up again, takes the
 * purchase, and is killed before its answer arrives. Up once more it is sent the same again, and the purchase is there once.
 */
class RestartIT {

    private static final String WAITING = "() => window.outbox.all().then(all => all.length)";
    private static final Pattern RECEIPT = Pattern.compile("href=\"/receipts/[0-9a-f-]{36}\"");
    private static final int UNDER_WAY = 409;

    @TempDir(cleanup = CleanupMode.ON_SUCCESS)
    private Path folder;

    private final Visitor visitor = new Visitor();

    @Test
    void whatWaitsWhileTheProgramIsGoneIsStoredOnce() throws Exception {
        Browser.need("RestartIT");
        Path log = folder.resolve("program.log");
        List<String> properties = new ArrayList<>(TestDatabase.scratch(folder));
        properties.add("patinary.setup-code=" + TestDatabase.SETUP_CODE);
        try (Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                com.microsoft.playwright.Browser browser = Browser.launch(playwright)) {
            Page page;
            int port;
            try (JarProgram first = JarProgram.start(log, properties)) {
                port = first.port();
                page = signedIn(browser, port);
                first.kill();
                buy(page);
            }
            AtomicReference<JarProgram> doomed = new AtomicReference<>();
            dieBeforeTheAnswer(page, doomed);
            try (JarProgram second = JarProgram.startAt(port, log, properties)) {
                assertThat(receipts()).isZero();
                doomed.set(second);
                page.evaluate("() => { window.outbox.send(); }");
                page.waitForCondition(() -> doomed.get() == null);
                page.context().unroute("**/buy");
                until(page, 1);
            }
            try (JarProgram third = JarProgram.startAt(port, log, properties)) {
                assertThat(third.port()).isEqualTo(port);
                assertThat(receipts()).as("stored before the program died").isEqualTo(1);
                page.evaluate("() => window.outbox.send()");
                until(page, 0);
                assertThat(receipts()).as("and not once more").isEqualTo(1);
            }
        }
    }

    private Page signedIn(com.microsoft.playwright.Browser browser, int port) throws Exception {
        visitor.visit(port);
        CrashIT.openShop(visitor);
        Browser.Visit visit = Browser.visit(browser, "http://localhost:" + port);
        visit.signIn();
        Page page = visit.openToStay("/buy");
        page.waitForFunction("() => window.outbox.lists().paid !== undefined");
        return page;
    }

    /** Typed into the page that the phone kept: the program is not there. */
    private static void buy(Page page) {
        page.reload();
        page.fill("[name='things[0].price']", "4.25");
        page.fill("#tillTotal", "4.25");
        page.selectOption("#paidWith", "OWNER");
        page.click("button.big");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
        until(page, 1);
    }

    /**
     * The program stores the purchase and answers; nobody hears it. Before it is there, nothing gets through. On a slow machine the
     * phone asks again meanwhile, and is told that its entry is under way.
     */
    private static void dieBeforeTheAnswer(Page page, AtomicReference<JarProgram> doomed) {
        page.context().route("**/buy", route -> {
            JarProgram program = doomed.get();
            if (!route.request().method().equals("POST")) {
                route.resume();
            } else if (program == null) {
                route.abort();
            } else {
                int status = route.fetch().status();
                if (status != UNDER_WAY) {
                    assertThat(status).isEqualTo(201);
                    kill(program);
                    doomed.set(null);
                }
                route.abort();
            }
        });
    }

    private static void kill(JarProgram program) {
        try {
            program.kill();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    private long receipts() throws Exception {
        return RECEIPT.matcher(visitor.get("receipts").body())
                .results()
                .map(java.util.regex.MatchResult::group)
                .distinct()
                .count();
    }

    private static void until(Page page, int waiting) {
        page.waitForCondition(() -> {
            try {
                return Integer.valueOf(waiting).equals(page.evaluate(WAITING));
            } catch (PlaywrightException onItsWay) {
                return false;
            }
        });
    }
}
