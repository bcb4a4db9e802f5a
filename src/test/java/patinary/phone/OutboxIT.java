package patinary.phone;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.util.ReflectionTestUtils;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/**
 * What a phone does with an entry, in a real browser: whatever happens on the way, it is recorded once, and kept until
 * then.
 */
@ShopTest
@ExtendWith(Browser.class)
class OutboxIT {

    private static final String WAITING = "() => window.outbox.all().then(all => all.length)";
    private static final String STATES = "() => window.outbox.all().then(all => all.map(each => each.state).join())";
    private static final String KEPT = "() => caches.keys().then(names => names.join())";
    private static final String PUT = """
            entry => new Promise((done, failed) => {
              const opening = indexedDB.open("patinary");
              opening.onsuccess = () => {
                const transaction = opening.result.transaction("entries", "readwrite");
                transaction.objectStore("entries").add(entry);
                transaction.oncomplete = () => { opening.result.close(); done(); };
                transaction.onerror = () => failed(transaction.error);
              };
            })""";

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private ShellController shells;

    @BeforeEach
    void cashBox() {
        places.save(new MoneyPlace(ProbeController.PLACE, "Cash box", MoneyPlace.Kind.CASH));
    }

    @Test
    void anEntrySurvivesAReloadWithoutReceptionAndIsSentOnceItIsBack(Browser.Visit visit) {
        Page page = ready(visit);
        visit.context().setOffline(true);
        page.fill("#amount", "500");
        page.dblclick("main button[type=submit]");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
        assertThat(page.locator("#amount")).hasValue("");
        settled(page, 1);
        page.reload();
        assertThat(page.locator("h1")).hasText("Waiting to be sent");
        assertThat(page.locator("#waiting-number")).hasText("1");
        assertThat(page.locator("#waiting-state")).containsText("cannot be reached");
        visit.look("waiting-offline");
        assertStored(0);

        visit.context().setOffline(false);
        settled(page, 0);
        assertStored(1);
        assertThat(page.locator("#waiting-none")).isVisible();
        assertThat(page.locator("#waiting-last")).not().hasText("not yet");
    }

    @Test
    void anAnswerLostOnTheWayLeadsToTheSameReceipt(Browser.Visit visit) {
        Page page = ready(visit);
        AtomicInteger lost = new AtomicInteger();
        onSending(visit, route -> {
            route.fetch();
            lost.incrementAndGet();
            route.abort();
        });
        enter(page, "500");
        page.waitForCondition(() -> lost.get() > 0);
        assertStored(1);
        settled(page, 1);
        visit.context().unroute("**/probe");
        send(page);
        settled(page, 0);
        assertStored(1);
    }

    @Test
    void whatIsNoReceiptLeavesTheEntryOnThePhone(Browser.Visit visit) {
        Page page = ready(visit);
        List<Route.FulfillOptions> answers = List.of(
                new Route.FulfillOptions()
                        .setStatus(200)
                        .setContentType("text/html")
                        .setBody("Welcome to the cafe"),
                new Route.FulfillOptions()
                        .setStatus(200)
                        .setContentType("application/json")
                        .setBody("{\"key\":\"other\"}"),
                new Route.FulfillOptions().setStatus(503),
                new Route.FulfillOptions()
                        .setStatus(404)
                        .setContentType("text/html")
                        .setBody("who lends the reception"),
                new Route.FulfillOptions()
                        .setStatus(409)
                        .setContentType("application/json")
                        .setBody("{\"retry\":true,\"problems\":[]}"));
        AtomicInteger turn = new AtomicInteger();
        onSending(visit, route -> {
            int now = turn.getAndIncrement();
            if (now < answers.size()) {
                route.fulfill(answers.get(now));
            } else {
                route.abort("connectionrefused");
            }
        });
        enter(page, "500");
        for (int again = 1; again <= answers.size(); again++) {
            int tries = again;
            page.waitForCondition(() -> turn.get() >= tries);
            send(page);
            assertThat(page.evaluate(STATES)).isEqualTo("waiting");
        }
        assertStored(0);
        visit.context().unroute("**/probe");
        send(page);
        settled(page, 0);
        assertStored(1);
    }

    @Test
    void afterTheSignInIsOverEntriesWaitForTheNext(Browser.Visit visit) {
        Page page = ready(visit);
        visit.context().clearCookies();
        enter(page, "500");
        assertThat(page.locator(".outbox-waiting")).containsText("Sign in to send 1 entry");
        enter(page, "600");
        assertThat(page.locator(".outbox-waiting")).containsText("Sign in to send 2 entries");
        page.click(".outbox-waiting");
        page.fill("#name", InventedShop.OWNER);
        page.fill("#password", InventedShop.PASSWORD);
        page.click("main button[type=submit]");
        page.waitForURL("**/waiting");
        settled(page, 0);
        assertStored(2);
    }

    @Test
    void aRefusedEntryIsMendedAndBlocksNoOther(Browser.Visit visit) {
        Page page = ready(visit);
        visit.context().setOffline(true);
        page.fill("#note", "a chair");
        page.selectOption("#wood", "2");
        page.click("main button[type=submit]");
        settled(page, 1);
        tapAgain(page);
        page.fill("#amount", "600");
        page.click("main button[type=submit]");
        settled(page, 2);
        visit.context().setOffline(false);
        until(page, STATES, "heed");
        assertStored(1);
        assertThat(page.locator(".outbox-waiting")).containsText("1 entry needs your attention");

        page.click(".outbox-waiting");
        assertThat(page.locator("#waiting-list .card")).containsText("needs your attention");
        assertThat(page.locator(".reasons li")).hasCount(1);
        assertThat(page.locator("#waiting-sign-in")).isHidden();
        visit.look("waiting-attention");
        page.click("text=Mend");
        assertThat(page.locator("#note")).hasValue("a chair");
        assertThat(page.locator("#wood")).hasValue("2");
        assertThat(page.locator("#amount")).hasAttribute("aria-invalid", "true");
        visit.look("mend");
        enter(page, "700");
        settled(page, 0);
        assertStored(2);
        assertThat(jdbc.sql("select count(*) from document where note = 'a chair'")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void anEntryIsDiscardedOnlyAfterAQuestion(Browser.Visit visit) {
        Page page = ready(visit);
        enter(page, "");
        until(page, STATES, "heed");
        visit.open("/waiting");
        page.click("[data-act=discard]");
        page.click("[data-act=no]");
        page.click("[data-act=discard]");
        String copy = new String(
                readAll(page.waitForDownload(() -> page.click("#waiting-export"))
                        .createReadStream()),
                StandardCharsets.UTF_8);
        assertThat(copy).contains("\"to\": \"/probe\"");
        page.click("[data-act=yes]");
        settled(page, 0);
        assertStored(0);
    }

    @Test
    void twoPhonesRecordEachOfTheirEntriesOnce(Browser.Visit visit) {
        Page mine = ready(visit);
        visit.context().setOffline(true);
        enter(mine, "500");
        settled(mine, 1);
        tapAgain(mine);
        Object entry =
                mine.evaluate("() => window.outbox.all().then(([first]) => { delete first.seq; return first; })");
        try (BrowserContext other = otherPhone(visit)) {
            Page theirs = other.newPage();
            signIn(theirs);
            theirs.navigate("/probe");
            theirs.evaluate(PUT, entry);
            theirs.evaluate("() => { window.outbox.send(); }");
            visit.context().setOffline(false);
            enter(theirs, "600");
            settled(theirs, 0);
            settled(mine, 0);
        }
        assertStored(2);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void twoWindowsSendOneAfterTheOther(boolean locks, Browser.Visit visit) {
        if (!locks) {
            visit.context().addInitScript("Object.defineProperty(Navigator.prototype, 'locks', { value: undefined })");
        }
        Page first = ready(visit);
        Page second = visit.context().newPage();
        second.navigate(first.url());
        AtomicInteger sent = new AtomicInteger();
        visit.context().onRequest(request -> {
            if (request.method().equals("POST")) {
                sent.incrementAndGet();
            }
        });
        visit.context().setOffline(true);
        for (int entry = 1; entry <= 6; entry++) {
            Page page = entry % 2 == 0 ? second : first;
            enter(page, String.valueOf(entry));
            settled(page, entry);
            tapAgain(page);
        }
        sent.set(0);
        visit.context().setOffline(false);
        settled(first, 0);
        settled(second, 0);
        assertStored(6);
        assertThat(sent.get()).isEqualTo(6);
    }

    @Test
    void aPhoneWithoutRoomSaysSoAndKeepsWhatWasTyped(Browser.Visit visit) throws IOException {
        Page page = ready(visit);
        // A browser's own quota is not reliably set from outside; this is how it answers once it is reached.
        page.evaluate("""
                () => { window.real = IDBObjectStore.prototype.add;
                  IDBObjectStore.prototype.add = () => { throw new DOMException("full", "QuotaExceededError"); }; }""");
        page.fill("#amount", "500");
        page.setInputFiles("#photo", picture(1200, 900));
        page.click("main button[type=submit]");
        assertThat(page.locator(".outbox-said")).containsText("no room left on this phone");
        assertThat(page.locator("#amount")).hasValue("500");
        settled(page, 0);
        assertStored(0);
        page.evaluate("() => { IDBObjectStore.prototype.add = window.real; }");
        tapAgain(page);
        page.setInputFiles("#photo", new FilePayload[0]);
        page.click("main button[type=submit]");
        settled(page, 0);
        page.waitForCondition(() -> stored() == 1);
    }

    @Test
    void aPhotoIsMadeSmallAndFollowsItsEntry(Browser.Visit visit) throws IOException {
        Page page = ready(visit);
        visit.context().setOffline(true);
        page.fill("#amount", "500");
        page.setInputFiles("#photo", picture(2400, 1800));
        page.click("main button[type=submit]");
        settled(page, 2);
        assertThat(page.evaluate("""
                () => window.outbox.all().then(async ([entry, photo]) => {
                  const small = await createImageBitmap(photo.file);
                  const said = Object.fromEntries(photo.fields);
                  return [small.width, small.height, photo.file.type, photo.parent === entry.key, said.of === entry.key,
                    said.id === photo.key, said.subject, said.stage].join();
                })""")).isEqualTo("1600,1200,image/jpeg,true,true,true,DOCUMENT,RECEIPT");
        StringBuilder order = new StringBuilder();
        visit.context().route("**/photos", route -> {
            order.append("photo");
            assertStored(1);
            String key = route.request().headerValue("idempotency-key").replace("\"", "");
            route.fulfill(new Route.FulfillOptions()
                    .setStatus(201)
                    .setContentType("application/json")
                    .setBody("{\"key\":\"" + key + "\",\"href\":\"/photos\",\"words\":\"kept\"}"));
        });
        visit.context().setOffline(false);
        settled(page, 0);
        assertThat(order).hasToString("photo");
    }

    @Test
    void aNewVersionOfThePagesLeavesEntriesAlone(Browser.Visit visit) {
        Page page = ready(visit);
        String before = kept(page);
        onSending(visit, Route::abort);
        enter(page, "500");
        settled(page, 1);
        String worker = (String) ReflectionTestUtils.getField(shells, "worker");
        String changed = worker.replaceFirst("VERSION = \"[0-9a-f]+\"", "VERSION = \"next\"");
        ReflectionTestUtils.setField(shells, "worker", changed);
        try {
            page.evaluate("() => navigator.serviceWorker.getRegistration().then(each => each.update())");
            until(page, KEPT, "shell-next-en-US");
        } finally {
            ReflectionTestUtils.setField(shells, "worker", worker);
        }
        assertThat(before).isNotEqualTo("shell-next-en-US");
        page.reload();
        settled(page, 1);
        visit.context().unroute("**/probe");
        send(page);
        settled(page, 0);
        assertStored(1);
    }

    /** From the second visit on the pages open without reception and without a sign-in, and show nothing of the shop. */
    @Test
    void thePagesOpenSignedOutAndWithoutReception(Browser.Visit visit) {
        Page page = visit.openToStay("/waiting");
        visit.context().setOffline(true);
        page.reload();
        assertThat(page.locator("h1")).hasText("Waiting to be sent");
        assertThat(page.locator(".bar a")).hasCount(4);
        assertThat(page.locator("#waiting-none")).isVisible();
        visit.look("waiting-signed-out");
        @SuppressWarnings("unchecked")
        List<String> copies = (List<String>) page.evaluate("""
                () => caches.keys().then(names => Promise.all(names.map(name => caches.open(name).then(cache => cache.keys())))
                  .then(all => all.flat().map(request => new URL(request.url).pathname)))""");
        assertThat(copies)
                .contains("/waiting")
                .allMatch(path -> path.matches("/(waiting|buy|stall|bench/now|count|css/.*|js/.*|img/.*)"));
    }

    private Page ready(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.openToStay("/probe");
        page.waitForFunction("() => window.outbox.lists().probe !== undefined");
        return page;
    }

    private static String kept(Page page) {
        return String.valueOf(page.evaluate(KEPT));
    }

    private static void enter(Page page, String amount) {
        page.fill("#amount", amount);
        page.click("main button[type=submit]");
        assertThat(page.locator("#amount")).hasValue("");
        tapAgain(page);
    }

    /** A second tap is ignored for a moment. */
    private static void tapAgain(Page page) {
        assertThat(page.locator("form[data-saving]")).hasCount(0);
    }

    private static void send(Page page) {
        page.evaluate("() => window.outbox.send()");
    }

    private static void onSending(Browser.Visit visit, Consumer<Route> answer) {
        visit.context().route("**/probe", route -> {
            if (route.request().method().equals("POST")) {
                answer.accept(route);
            } else {
                route.resume();
            }
        });
    }

    private static void settled(Page page, int waiting) {
        until(page, WAITING, waiting);
    }

    /** The function of the page is asked for its promise's value; a page on its way elsewhere has none. */
    private static void until(Page page, String asked, Object expected) {
        page.waitForCondition(() -> {
            try {
                return expected.equals(page.evaluate(asked));
            } catch (PlaywrightException onTheWay) {
                return false;
            }
        });
    }

    private static BrowserContext otherPhone(Browser.Visit visit) {
        String start = visit.page().url().replaceFirst("/probe.*", "");
        return visit.context()
                .browser()
                .newContext(new com.microsoft.playwright.Browser.NewContextOptions().setBaseURL(start));
    }

    private static void signIn(Page page) {
        page.navigate("/sign-in");
        page.fill("#name", InventedShop.OWNER);
        page.fill("#password", InventedShop.PASSWORD);
        page.click("main button[type=submit]");
        page.waitForURL("**/");
    }

    private static FilePayload picture(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return new FilePayload("chair.png", "image/png", bytes.toByteArray());
    }

    private static byte[] readAll(InputStream stream) {
        try (stream) {
            return stream.readAllBytes();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private long stored() {
        return jdbc.sql("select count(*) from owner_money").query(Long.class).single();
    }

    private void assertStored(int count) {
        assertThat(stored()).isEqualTo(count);
        assertThat(jdbc.sql("select count(*) from delivery").query(Long.class).single())
                .isEqualTo(count);
    }
}
