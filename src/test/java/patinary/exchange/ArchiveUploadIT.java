package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.Visitor;

/** An archive with photos, larger than any other form may be, comes in through the page; whoever may not send one leaves nothing on the disk. */
@ShopTest
@ExtendWith(Browser.class)
class ArchiveUploadIT {

    private static final int MEGA = 1024 * 1024;
    private static final long LARGE = 40L * MEGA;
    private static final String PATH = "/shop/archive";

    @Autowired
    private JdbcClient jdbc;

    @LocalServerPort
    private int port;

    @Value("${patinary.data:./data}")
    private Path data;

    @TempDir
    private Path folder;

    @Test
    void aLargeOneComesInWithItsPhotos() throws Exception {
        Path zip = withPhotos();
        assertThat(Files.size(zip)).isGreaterThan(LARGE);
        Visitor owner = signedIn(InventedShop.OWNER);

        HttpResponse<String> answer = send(owner, zip);

        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        assertThat(owner.get(PATH).body()).contains("with everything the archive holds");
        long photos = jdbc.sql("select count(*) from photo").query(Long.class).single();
        assertThat(photos * noise().length).isGreaterThan(LARGE);
        assertThat(arriving()).isZero();
    }

    @Test
    void nobodyElseStoresAByteOfIt() throws Exception {
        jdbc.sql("insert into person (id, name, password_hash, role, created_at, version)"
                        + " select cast('00000000-0000-4000-8000-000000000002' as uuid), 'Kim', password_hash, 'HELPER',"
                        + " created_at, 0 from person")
                .update();
        Visitor stranger = new Visitor();
        stranger.visit(port);
        Visitor owner = signedIn(InventedShop.OWNER);
        Visitor helper = signedIn("Kim");

        assertThat(begin(stranger, stranger.token("/sign-in")))
                .startsWith("HTTP/1.1 302")
                .contains("/sign-in");
        assertThat(begin(helper, helper.token("/pieces"))).startsWith("HTTP/1.1 403");
        assertThat(begin(owner, "invented")).startsWith("HTTP/1.1 403").contains("open too long");
        assertThat(arriving()).isZero();
    }

    @Test
    void everyOtherFormKeepsItsLimit() throws Exception {
        Visitor owner = signedIn(InventedShop.OWNER);

        for (String path : new String[] {"/photos", "/sales/bring", "/receipts/read"}) {
            assertThat(owner.upload("/shop", path, "large.jpg", new byte[15 * MEGA + 1])
                            .statusCode())
                    .as(path)
                    .isEqualTo(413);
        }
    }

    @Test
    void aBrowserShowsHowFarItIsAndHowItWent(Browser.Visit visit) throws Exception {
        Path zip = withPhotos();
        visit.signIn();
        var page = visit.open(PATH);
        page.evaluate("() => { const seen = window.seen = []; new MutationObserver(() => {"
                + " seen.push(document.querySelector('form progress').value); })"
                + ".observe(document.querySelector('form progress'), { attributes: true }); }");
        page.setInputFiles("#archive", zip);

        page.click("form[data-archive] button");

        page.waitForSelector(".notice");
        assertThat(page.textContent(".notice")).contains("with everything the archive holds");
        assertThat(page.evaluate("() => window.seen.some(value => value > 0)")).isEqualTo(true);
        page.setInputFiles("#archive", zip);
        page.click("form[data-archive] button");
        page.waitForSelector("main > .summary");
        assertThat(page.textContent("main > .summary")).contains("Something has been recorded in this shop already");
        assertThat(page.querySelector(".notice")).isNull();
        visit.look("archive-refused");
    }

    private Visitor signedIn(String name) throws Exception {
        Visitor visitor = new Visitor();
        visitor.visit(port);
        visitor.fill("/sign-in", "/sign-in", Map.of("name", name, "password", InventedShop.PASSWORD));
        return visitor;
    }

    private long arriving() throws IOException {
        Path arriving = data.resolve(ArrivingArchive.FOLDER);
        if (!Files.isDirectory(arriving)) {
            return 0;
        }
        try (Stream<Path> files = Files.list(arriving)) {
            return files.count();
        }
    }

    private HttpResponse<String> send(Visitor visitor, Path zip) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + PATH))
                .header("Content-Type", "multipart/form-data; boundary=xx")
                .header("Cookie", visitor.cookies())
                .POST(HttpRequest.BodyPublishers.concat(
                        HttpRequest.BodyPublishers.ofString(head(visitor.token(PATH))),
                        HttpRequest.BodyPublishers.ofFile(zip),
                        HttpRequest.BodyPublishers.ofString("\r\n--xx--\r\n")))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** Announces a gigabyte, sends a little of it and reads the answer, which therefore does not wait for the rest. */
    private String begin(Visitor visitor, String token) throws IOException {
        byte[] begun = (head(token) + "x".repeat(100_000)).getBytes(StandardCharsets.UTF_8);
        String request = "POST " + PATH + " HTTP/1.1\r\nHost: localhost:" + port + "\r\nCookie: " + visitor.cookies()
                + "\r\nContent-Type: multipart/form-data; boundary=xx\r\nContent-Length: 1000000000\r\n\r\n";
        try (Socket socket = new Socket("localhost", port)) {
            socket.setSoTimeout(15_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().write(begun);
            socket.getOutputStream().flush();
            ByteArrayOutputStream answer = new ByteArrayOutputStream();
            InputStream stream = socket.getInputStream();
            while (!complete(answer)) {
                int next = stream.read();
                if (next < 0) {
                    break;
                }
                answer.write(next);
            }
            return answer.toString(StandardCharsets.UTF_8);
        }
    }

    /** Whether the head is there, and a page where one follows. */
    private static boolean complete(ByteArrayOutputStream answer) {
        String said = answer.toString(StandardCharsets.UTF_8);
        return said.startsWith("HTTP/1.1 3") ? said.contains("\r\n\r\n") : said.contains("</html>");
    }

    private static String head(String token) {
        return "--xx\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token
                + "\r\n--xx\r\nContent-Disposition: form-data; name=\"archive\"; filename=\"shop.zip\"\r\n"
                + "Content-Type: application/zip\r\n\r\n";
    }

    /** A small invented shop with pictures that no one can press small. */
    private Path withPhotos() throws IOException {
        Path small = folder.resolve("small.zip");
        new patinary.invented.InventedShop(5, 3).write(small);
        Path large = folder.resolve("large.zip");
        try (ZipFile from = new ZipFile(small.toFile());
                OutputStream file = Files.newOutputStream(large);
                ZipOutputStream to = new ZipOutputStream(file)) {
            for (Enumeration<? extends ZipEntry> entries = from.entries(); entries.hasMoreElements(); ) {
                ZipEntry entry = entries.nextElement();
                if (!entry.getName().equals(Manifest.FILE)) {
                    to.putNextEntry(new ZipEntry(entry.getName()));
                    from.getInputStream(entry).transferTo(to);
                }
            }
            addPhotos(to);
        }
        return large;
    }

    private static void addPhotos(ZipOutputStream to) throws IOException {
        StringBuilder rows = new StringBuilder(
                "id,piece_id,document_id,stage,sort_order,width,height,bytes,sha256,taken_on,added_at,added_by,taken_away_at\r\n");
        byte[] picture = noise();
        for (int i = 0; i * (long) picture.length <= LARGE; i++) {
            byte[] one = java.util.Arrays.copyOf(picture, picture.length + 1);
            // Behind its end: another picture for the archive, the same for the eye.
            one[picture.length] = (byte) i;
            String name = Manifest.hash(new java.io.ByteArrayInputStream(one));
            to.putNextEntry(new ZipEntry(PhotoTables.file(name)));
            to.write(one);
            rows.append("00000000-0000-4000-8000-%012d,,,AFTER,%d,1000,1000,%d,%s,,2025-06-01T10:00:00Z,Robin,\r\n"
                    .formatted(i, i, one.length, name));
        }
        to.putNextEntry(new ZipEntry("photo.csv"));
        to.write(rows.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] noise() throws IOException {
        Random random = new Random(7);
        BufferedImage image = new BufferedImage(1000, 1000, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 1_000_000; i++) {
            image.setRGB(i % 1000, i / 1000, random.nextInt(0x1000000));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", bytes);
        return bytes.toByteArray();
    }
}
