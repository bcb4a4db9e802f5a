package patinary.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLHandshakeException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import patinary.exchange.DemoData;
import patinary.testing.Browser;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;

/** The packed program with HTTPS of its own: a client that trusts its authority alone, and a browser on another name. */
class HttpsIT {

    private static final List<String> PHONE_PAGES = List.of("/buy", "/stall", "/bench/now", "/waiting");
    private static final String NAME = "workroom.local";

    @TempDir
    private static Path folder;

    private static JarProgram program;
    private static int securePort;

    @BeforeAll
    static void open() throws IOException {
        try (ServerSocket free = new ServerSocket(0)) {
            securePort = free.getLocalPort();
        }
        List<String> settings = new ArrayList<>(TestDatabase.scratch(folder.resolve("data")));
        if (settings.stream().noneMatch(setting -> setting.startsWith("patinary.data="))) {
            settings.add("patinary.data=" + folder.resolve("data"));
        }
        settings.addAll(List.of(
                "patinary.demo=true",
                "patinary.https.names=" + NAME + ",127.0.0.1",
                "patinary.https.port=" + securePort));
        program = JarProgram.start(folder.resolve("log.txt"), settings);
    }

    @AfterAll
    static void close() throws InterruptedException {
        program.close();
    }

    @Test
    void aClientThatTrustsTheAuthorityAloneIsServed() throws Exception {
        HttpResponse<String> page = client(authority()).send(secure("127.0.0.1", "sign-in"), text());

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.sslSession().orElseThrow().getProtocol()).isEqualTo("TLSv1.3");
        assertThat(page.headers().firstValue("Strict-Transport-Security"))
                .as("a name of the house is never bound to HTTPS: the plain page must stay open")
                .isEmpty();
        assertThat(page.headers().allValues("Set-Cookie"))
                .anySatisfy(cookie -> assertThat(cookie)
                        .startsWith("__Host-patinary=")
                        .contains("Secure", "HttpOnly", "SameSite=Lax", "Path=/"));
    }

    @Test
    void aPlainAnswerHasACookieOfAnotherName() throws Exception {
        HttpResponse<String> page = client(authority()).send(plain("sign-in"), text());

        assertThat(page.headers().allValues("Set-Cookie"))
                .anySatisfy(cookie -> assertThat(cookie).startsWith("patinary=").doesNotContain("Secure"));
    }

    @Test
    void nobodyElseIsBelieved() throws Exception {
        X509Certificate other = Authority.make(Names.parse(NAME + ",127.0.0.1"), java.time.Instant.now())
                .certificate();
        assertThatThrownBy(() -> client(other).send(secure("127.0.0.1", "sign-in"), text()))
                .isInstanceOf(SSLHandshakeException.class);
        HttpClient trusting = client(authority());
        assertThatThrownBy(() -> trusting.send(secure("localhost", "sign-in"), text()))
                .as("a name that the certificate does not carry")
                .hasRootCauseInstanceOf(java.security.cert.CertificateException.class);
    }

    /** As a phone does that leaves a page whose parts are still on their way. */
    @Test
    void anAnswerThatIsGivenUpTakesNoOtherWithIt() throws Exception {
        HttpClient client = client(authority());
        String page = client.send(secure("127.0.0.1", "sign-in"), text()).body();
        HttpRequest style = zipped(page.split("href=\"/(?=css/)")[1].split("\"")[0]);
        byte[] whole =
                client.send(style, HttpResponse.BodyHandlers.ofByteArray()).body();

        for (int turn = 0; turn < 40; turn++) {
            var wanted = client.sendAsync(style, HttpResponse.BodyHandlers.ofByteArray());
            var givenUp = client.sendAsync(style, HttpResponse.BodyHandlers.ofByteArray());
            givenUp.cancel(true);
            assertThat(wanted.get(20, TimeUnit.SECONDS).body())
                    .as("turn %d", turn)
                    .isEqualTo(whole);
        }
    }

    @Test
    void theAuthorityIsHandedOutAsPhonesAndLaptopsTakeIt() throws Exception {
        HttpResponse<byte[]> binary =
                plainClient().send(plain("trust/authority.crt"), HttpResponse.BodyHandlers.ofByteArray());
        HttpResponse<byte[]> asText =
                plainClient().send(plain("trust/authority.pem"), HttpResponse.BodyHandlers.ofByteArray());

        assertThat(binary.headers().firstValue("Content-Type")).contains("application/x-x509-ca-cert");
        assertThat(asText.headers().firstValue("Content-Type")).contains("application/x-x509-ca-cert");
        assertThat(certificate(binary.body())).isEqualTo(certificate(asText.body()));
        assertThat(plainClient().send(plain("trust"), text()).body())
                .contains(Fingerprint.of(certificate(binary.body())).substring(0, 23));
    }

    /** The browser is told to take the server's key; whether it would trust an authority in its list is not tested here. */
    @Test
    void onTheSecureWayABrowserAllowsWhatItKeepsFromThePlainOne() throws Exception {
        Browser.need("HttpsIT");
        Map<String, String> quiet = Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        try (Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(quiet))) {
            var browser = Browser.launch(
                    playwright,
                    "--host-resolver-rules=MAP " + NAME + " 127.0.0.1",
                    "--ignore-certificate-errors-spki-list=" + serversKey());
            secureWay(Browser.visit(browser, "https://" + NAME + ":" + securePort));
            plainWay(Browser.visit(browser, "http://" + NAME + ":" + program.port()));
            Page atHome =
                    Browser.visit(browser, "http://localhost:" + program.port()).open("/sign-in");
            assertThat(atHome.locator(".plain-way").count()).isZero();
        }
    }

    private static void secureWay(Browser.Visit visit) {
        Page page = visit.open("/sign-in");
        assertThat(page.evaluate("isSecureContext && 'serviceWorker' in navigator && !!navigator.mediaDevices"))
                .isEqualTo(true);
        assertThat(page.locator(".plain-way").count()).isZero();
        signIn(visit, "https://" + NAME + ":" + securePort);
        assertThat(visit.context().cookies())
                .singleElement()
                .satisfies(cookie -> assertThat(cookie.secure).isTrue());
        for (String path : PHONE_PAGES) {
            assertThat(visit.open(path).locator("main h1").count()).as(path).isOne();
            assertThat(page.url()).endsWith(path);
            assertThat(page.locator(".plain-way").count()).as(path).isZero();
            // Its own script registers it; without trust in the certificate the browser would refuse.
            assertThat(page.evaluate("navigator.serviceWorker.ready.then(worker => worker.scope)"))
                    .isEqualTo("https://" + NAME + ":" + securePort + "/");
        }
        visit.open("/trust");
        visit.look("trust-secure");
        assertThat(againstInstalling(visit)).isEmpty();
    }

    private static void signIn(Browser.Visit visit, String start) {
        Page page = visit.open("/sign-in");
        page.fill("#name", DemoData.OWNER);
        page.fill("#password", DemoData.PASSWORD);
        page.click("main button[type=submit]");
        page.waitForURL(start + "/");
    }

    /** What a browser has against installing the page, but that a test's window keeps nothing. */
    private static List<String> againstInstalling(Browser.Visit visit) {
        var devtools = visit.context().newCDPSession(visit.page());
        assertThat(devtools.send("Page.getAppManifest").getAsJsonArray("errors"))
                .isEmpty();
        List<String> reasons = new ArrayList<>();
        devtools.send("Page.getInstallabilityErrors")
                .getAsJsonArray("installabilityErrors")
                .forEach(reason ->
                        reasons.add(reason.getAsJsonObject().get("errorId").getAsString()));
        reasons.remove("in-incognito");
        return reasons;
    }

    private static void plainWay(Browser.Visit visit) {
        Page page = visit.open("/sign-in");
        assertThat(page.evaluate("isSecureContext || 'serviceWorker' in navigator"))
                .isEqualTo(false);
        assertThat(page.locator(".plain-way").isVisible()).isTrue();
        visit.look("sign-in-plain");
        page.click(".plain-way a");
        page.waitForURL("**/trust");
        page.locator("details summary").all().forEach(summary -> {
            if (summary.isVisible()) {
                summary.click();
            }
        });
        assertThat(page.evaluate("[...document.images].every(image => image.complete && image.naturalWidth > 0)"))
                .isEqualTo(true);
        visit.look("trust-plain");
        assertThat(againstInstalling(visit)).contains("not-from-secure-origin");
        signIn(visit, "http://" + NAME + ":" + program.port());
        for (String path : PHONE_PAGES) {
            assertThat(visit.open(path).locator(".plain-way").isVisible())
                    .as(path)
                    .isTrue();
        }
        assertThat(visit.open("/receipts/new").locator("main form").count())
                .as("recording goes on there")
                .isPositive();
    }

    private static String serversKey() throws Exception {
        HttpResponse<String> page = client(authority()).send(secure("127.0.0.1", "sign-in"), text());
        byte[] key = page.sslSession()
                .orElseThrow()
                .getPeerCertificates()[0]
                .getPublicKey()
                .getEncoded();
        return Base64.getEncoder()
                .encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
    }

    private static X509Certificate authority() throws Exception {
        return certificate(plainClient()
                .send(plain("trust/authority.crt"), HttpResponse.BodyHandlers.ofByteArray())
                .body());
    }

    private static X509Certificate certificate(byte[] bytes) throws Exception {
        return (X509Certificate)
                CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(bytes));
    }

    private static HttpClient client(X509Certificate trusted) throws Exception {
        return HttpClient.newBuilder()
                .sslContext(Handshake.trusting(trusted))
                .cookieHandler(new CookieManager())
                .build();
    }

    private static HttpClient plainClient() {
        return HttpClient.newHttpClient();
    }

    private static HttpRequest secure(String host, String path) {
        return HttpRequest.newBuilder(URI.create("https://" + host + ":" + securePort + "/" + path))
                .build();
    }

    private static HttpRequest zipped(String path) {
        return HttpRequest.newBuilder(secure("127.0.0.1", path), (name, value) -> true)
                .header("Accept-Encoding", "gzip")
                .build();
    }

    private static HttpRequest plain(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + program.port() + "/" + path))
                .build();
    }

    private static HttpResponse.BodyHandler<String> text() {
        return HttpResponse.BodyHandlers.ofString();
    }
}
