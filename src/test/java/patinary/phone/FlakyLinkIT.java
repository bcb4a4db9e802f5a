package patinary.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.ledger.Check;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/**
 * A thousand entries over a link that drops: before the shop has heard anything, in the middle of a request, after it and
 * before the answer, in the middle of the answer. What brought no receipt is sent again, some of it twice at once, and some
 * is repeated although its receipt came. In the end each is recorded exactly once, and nothing is half done.
 *
 * <p>Every other one is a document in the books, which derive all their postings anew for each; the others are rows that only
 * their key keeps from being stored twice.
 */
@ShopTest
class FlakyLinkIT {

    private static final int ENTRIES = 1000;
    private static final long SEED = 20251125;
    private static final Pattern COOKIE = Pattern.compile("(?im)^set-cookie: (patinary=[^;]+)");
    private static final Pattern HIDDEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final Pattern TOKEN = Pattern.compile("\"token\":\"([^\"]+)\"");

    @LocalServerPort
    private int port;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Check check;

    private final Random random = new Random(SEED);
    private String cookie = "";
    private String token = "";
    private int dropped;

    private enum Fate {
        NEVER_CONNECTED,
        CUT_WHILE_SENDING,
        CUT_BEFORE_THE_ANSWER,
        CUT_IN_THE_ANSWER,
        GOES_WELL
    }

    @BeforeEach
    void signIn() throws IOException {
        places.save(new MoneyPlace(ProbeController.PLACE, "Cash box", MoneyPlace.Kind.CASH));
        String page = ask("GET", "/sign-in", "", "");
        cookie = found(COOKIE, page);
        String form = "name=" + InventedShop.OWNER + "&password=" + encoded(InventedShop.PASSWORD) + "&_csrf="
                + encoded(found(HIDDEN, page));
        cookie = found(COOKIE, ask("POST", "/sign-in", "", form));
        token = found(TOKEN, ask("GET", "/phone/token", "", ""));
    }

    @Test
    void aThousandEntriesAreEachRecordedExactlyOnce() throws IOException {
        List<UUID> keys = Stream.generate(() -> new UUID(random.nextLong(), random.nextLong()))
                .limit(ENTRIES)
                .toList();
        Deque<UUID> waiting = new ArrayDeque<>(keys);
        while (!waiting.isEmpty()) {
            UUID key = waiting.poll();
            boolean receipt = random.nextInt(20) == 0 ? twiceAtOnce(key) : deliver(key, fate());
            if (!receipt) {
                waiting.add(key);
            } else if (random.nextInt(20) == 0) {
                assertThat(deliver(key, Fate.GOES_WELL)).isTrue();
            }
        }
        assertThat(dropped).as("the link dropped").isGreaterThan(ENTRIES / 3);
        List<UUID> recorded = new ArrayList<>(
                jdbc.sql("select id from owner_money").query(UUID.class).list());
        assertThat(recorded).hasSizeBetween(ENTRIES * 2 / 5, ENTRIES * 3 / 5).allMatch(FlakyLinkIT::isDocument);
        recorded.addAll(jdbc.sql("select cast(note as uuid) from source")
                .query(UUID.class)
                .list());
        assertThat(recorded).containsExactlyInAnyOrderElementsOf(keys);
        assertThat(jdbc.sql("select entry_key from delivery where href <> ''")
                        .query(UUID.class)
                        .list())
                .containsExactlyInAnyOrderElementsOf(keys);
        assertThat(jdbc.sql("select sum(amount_minor) from posting where account = 'MONEY'")
                        .query(Long.class)
                        .single())
                .isEqualTo(keys.stream()
                        .filter(FlakyLinkIT::isDocument)
                        .mapToLong(FlakyLinkIT::amount)
                        .sum());
        assertThat(check.run()).isEmpty();
    }

    private Fate fate() {
        Fate[] all = Fate.values();
        return random.nextInt(10) < 6 ? Fate.GOES_WELL : all[random.nextInt(all.length - 1)];
    }

    /** Two windows, or a phone that repeats while the first is still under way. */
    private boolean twiceAtOnce(UUID key) {
        CompletableFuture<Boolean> other = CompletableFuture.supplyAsync(() -> send(key, Fate.GOES_WELL, 0));
        boolean mine = send(key, Fate.GOES_WELL, 0);
        return other.join() | mine;
    }

    private boolean deliver(UUID key, Fate fate) {
        if (fate != Fate.GOES_WELL) {
            dropped++;
        }
        return send(key, fate, random.nextDouble());
    }

    /** Whether a whole receipt with the entry's key came back. */
    private boolean send(UUID key, Fate fate, double moment) {
        if (fate == Fate.NEVER_CONNECTED) {
            return false;
        }
        String more = "Idempotency-Key: \"" + key + "\"\r\nAccept: application/json\r\nX-CSRF-TOKEN: " + token + "\r\n";
        byte[] request = request(
                "POST",
                "/probe",
                more,
                "id=" + key + "&amount=" + amount(key) + (isDocument(key) ? "" : "&trouble=row"));
        try (Socket link = new Socket(InetAddress.getLoopbackAddress(), port)) {
            int sent = fate == Fate.CUT_WHILE_SENDING ? (int) (moment * (request.length - 1)) : request.length;
            link.getOutputStream().write(request, 0, sent);
            link.getOutputStream().flush();
            if (fate == Fate.CUT_WHILE_SENDING || fate == Fate.CUT_BEFORE_THE_ANSWER) {
                return false;
            }
            if (fate == Fate.CUT_IN_THE_ANSWER) {
                return link.getInputStream().readNBytes(1 + (int) (moment * 100)).length < 0;
            }
            String answer = read(link.getInputStream());
            assertThat(answer.substring(9, 12)).isIn("200", "201", "409");
            return answer.contains("\"key\":\"" + key + "\",\"href\":\"");
        } catch (IOException dead) {
            return false;
        }
    }

    private static boolean isDocument(UUID key) {
        return Math.floorMod(key.getMostSignificantBits(), 2) == 0;
    }

    private static long amount(UUID key) {
        return 1 + Math.floorMod(key.hashCode(), 100_000);
    }

    private String ask(String method, String path, String more, String body) throws IOException {
        try (Socket link = new Socket(InetAddress.getLoopbackAddress(), port)) {
            link.getOutputStream().write(request(method, path, more, body));
            return read(link.getInputStream());
        }
    }

    private byte[] request(String method, String path, String more, String body) {
        String head = method + " " + path + " HTTP/1.1\r\nHost: localhost:" + port + "\r\nConnection: close\r\n"
                + (cookie.isEmpty() ? "" : "Cookie: " + cookie + "\r\n") + more
                + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length() + "\r\n\r\n";
        return (head + body).getBytes(StandardCharsets.US_ASCII);
    }

    private static String read(InputStream answer) throws IOException {
        return new String(answer.readAllBytes(), StandardCharsets.UTF_8);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String found(Pattern pattern, String text) {
        Matcher match = pattern.matcher(text);
        assertThat(match.find()).as(pattern + " in " + text).isTrue();
        return match.group(1);
    }
}
