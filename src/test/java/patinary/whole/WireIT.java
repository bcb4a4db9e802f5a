package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Requests as no browser writes them, over the wire: broken parts of a form, forbidden signs, too much of everything. */
@ShopTest
class WireIT {

    private static final Pattern COOKIE = Pattern.compile("(?i)set-cookie: ([^=]+=[^;]+)");
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");
    private static final Pattern STATUS = Pattern.compile("HTTP/1\\.1 (\\d{3})");
    private static final String END = "\r\n";
    private static final String PARTS = "Content-Type: multipart/form-data; boundary=xx\r\n";

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcClient jdbc;

    private String cookie = "";
    private String token = "";

    @Test
    void areRefusedInWordsAndLeaveNothing() throws Exception {
        signIn();
        long before = rows();
        Map<String, String> faults = new TreeMap<>();
        for (String target : List.of("/photos", "/sales/bring", "/shop/archive", "/receipts/read", "/receipts")) {
            for (String body : brokenParts()) {
                // The form of an archive is read as it comes, and the address is no part of it.
                String head = PARTS + (target.equals("/shop/archive") ? "X-CSRF-TOKEN: " + token + END : "");
                look(send("POST " + target + "?_csrf=" + token, head, body), target + " " + body, faults);
            }
            look(send("POST " + target, "Content-Type: application/json\r\n", "{\"id\":"), target + " json", faults);
            look(send("POST " + target, "Content-Type: \u0001/\u0002\r\n", "x"), target + " type", faults);
        }
        for (String head : oddHeads()) {
            look(send(head, "", ""), head.substring(0, Math.min(60, head.length())), faults);
        }
        look(send("GET /", "X: " + "y".repeat(200_000) + END, ""), "long header", faults);
        look(send("GET /", "Accept-Language: " + "x,".repeat(2000) + END, ""), "languages", faults);
        look(send("POST /receipts?_csrf=" + token, form(), "a=1&".repeat(20_000)), "many fields", faults);
        look(send("POST /receipts?_csrf=" + token, form(), "%zz=%&%u0000&=&&=%e2%28"), "bad escapes", faults);
        look(send("POST /bench/clock", json(), "{\"timer\":{\"at\":1e999}}"), "clock number", faults);
        look(send("POST /bench/clock", json(), "[".repeat(5000)), "clock depth", faults);
        look(
                send("POST /bench/clock", json(), "{\"pieces\":[null,\"\\u0000\"],\"waits\":[{}],\"x\":1}"),
                "clock",
                faults);

        assertThat(faults).isEmpty();
        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void traceIsRefusedAndNoMethodIsOverridden() throws Exception {
        signIn();
        assertThat(status(send("TRACE /", "X-Invented: seen\r\n", ""))).isIn(400, 405);
        assertThat(send("TRACE /", "X-Invented: seen\r\n", "")).doesNotContain("X-Invented");
        assertThat(status(send("GET /sales/bring?_method=POST&_csrf=" + token, "X-HTTP-Method-Override: POST\r\n", "")))
                .isEqualTo(200);
    }

    private static List<String> brokenParts() {
        String name = "Content-Disposition: form-data; name=\"";
        return List.of(
                "",
                "--xx",
                "--xx--",
                "--xx\r\n\r\n",
                "--xx\r\n" + name + "id\"\r\n\r\nnever ended",
                "--xx\r\n" + name + "file\"; filename=\"a\u0000b\"\r\nContent-Type: image/jpeg\r\n\r\nx\r\n--xx--\r\n",
                "--xx\r\n" + name
                        + "file\"; filename=\"../../../x.jpg\"\r\nContent-Type: nothing\r\n\r\nx\r\n--xx--\r\n",
                "--xx\r\n" + name + "file\"; filename*=utf-9''%zz\r\n\r\nx\r\n--xx--\r\n",
                "--xx\r\n" + name + "archive\"\r\n\r\nno file\r\n--xx--\r\n",
                "--xx\r\n" + "X: " + "y".repeat(20_000) + "\r\n\r\nx\r\n--xx--\r\n",
                ("--xx\r\n" + name + "a\"\r\n\r\n1\r\n").repeat(300) + "--xx--\r\n");
    }

    private static List<String> oddHeads() {
        return List.of(
                "GET /%00",
                "GET /..%2f..%2fetc/passwd",
                "GET /%c0%ae%c0%ae/",
                "GET /pieces;jsessionid=1",
                "GET //elsewhere.example/",
                "GET /\\elsewhere.example",
                "GET /css/..%5c..%5capplication.yaml",
                "GET /guide/..%2f..%2fpom",
                "GET /guide/%2e%2e",
                "GET /photos/" + "x".repeat(7000),
                "GET /?" + "q=1&".repeat(1500),
                "GET /pieces?page=99999999999999999999",
                "GET /pieces?page=-1&q=%00&state=%ff",
                "GET /error",
                "GET /phone/sign-in?back=//elsewhere.example",
                "POST /sign-in",
                "PROPFIND /",
                "get /");
    }

    private void signIn() throws IOException {
        keep(send("GET /sign-in", "", ""));
        String answer = send(
                "POST /sign-in",
                form(),
                "_csrf=" + token + "&name=" + InventedShop.OWNER + "&password="
                        + InventedShop.PASSWORD.replace(' ', '+'));
        assertThat(status(answer)).isEqualTo(303);
        keep(answer);
        keep(send("GET /receipts/new", "", ""));
    }

    private void keep(String answer) {
        Matcher set = COOKIE.matcher(answer);
        cookie = set.find() ? set.group(1) : cookie;
        Matcher said = TOKEN.matcher(answer);
        token = said.find() ? said.group(1) : token;
    }

    private static String form() {
        return "Content-Type: application/x-www-form-urlencoded\r\n";
    }

    private String json() {
        return "Content-Type: application/json\r\nAccept: application/json\r\nX-CSRF-TOKEN: " + token + END;
    }

    private void look(String answer, String what, Map<String, String> faults) {
        int status = status(answer);
        String name = what.substring(0, Math.min(120, what.length())).replaceAll("[^ -~]+", " ");
        String said = answer.replace(END, " ");
        if (status >= 500 && status != 501 || status == 0) {
            faults.put(name, said.substring(0, Math.min(200, said.length())));
        } else if (status >= 400
                && answer.substring(answer.indexOf(END + END) + 4).isBlank()) {
            faults.put(name + " has no words", said.substring(0, Math.min(200, said.length())));
        }
    }

    private static int status(String answer) {
        Matcher status = STATUS.matcher(answer);
        return status.lookingAt() ? Integer.parseInt(status.group(1)) : 0;
    }

    private String send(String head, String headers, String body) throws IOException {
        byte[] content = body.getBytes(StandardCharsets.UTF_8);
        String request = head + " HTTP/1.1\r\nHost: localhost:" + port + "\r\nConnection: close\r\n"
                + (cookie.isEmpty() ? "" : "Cookie: " + cookie + END)
                + headers + "Content-Length: " + content.length + END + END;
        try (Socket socket = new Socket("localhost", port)) {
            socket.setSoTimeout(20_000);
            OutputStream out = socket.getOutputStream();
            ByteArrayOutputStream whole = new ByteArrayOutputStream();
            whole.write(request.getBytes(StandardCharsets.ISO_8859_1));
            whole.write(content);
            try {
                out.write(whole.toByteArray());
                out.flush();
            } catch (IOException closedEarly) {
                // The server may answer and close before everything was sent: then there is an answer to read.
            }
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private long rows() {
        // A file of sales of one letter is a file: it waits for its columns to be named, and is no record.
        return jdbc.sql("select (select count(*) from document) + (select count(*) from photo)"
                        + " + (select count(*) from delivery)")
                .query(Long.class)
                .single();
    }
}
