package patinary.testing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A person without a browser: keeps cookies, and sends forms with the token that their page carries. */
public final class Visitor {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");
    private static final Pattern JSON_TOKEN = Pattern.compile("\"token\":\"([^\"]+)\"");
    private static final String BOUNDARY = "an-edge-that-no-picture-has";
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final CookieManager cookies;
    private final HttpClient client;
    private final Duration patience;
    private URI home = URI.create("http://localhost/");

    public Visitor() {
        this(PATIENCE);
    }

    /** Waits for each answer as long as is said here. */
    public Visitor(Duration patience) {
        this(patience, new CookieManager());
    }

    private Visitor(Duration patience, CookieManager cookies) {
        this.patience = patience;
        this.cookies = cookies;
        this.client = HttpClient.newBuilder()
                .cookieHandler(cookies)
                .followRedirects(HttpClient.Redirect.NEVER)
                .connectTimeout(PATIENCE)
                .build();
    }

    /** Another window of the same browser: the same cookies, at the program of that port. */
    public Visitor beside(int port) {
        Visitor window = new Visitor(patience, cookies);
        window.visit(port);
        return window;
    }

    /** Goes to the program at a port; cookies are kept, as a browser keeps them for a host. */
    public void visit(int port) {
        home = URI.create("http://localhost:" + port + "/");
    }

    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(request(path).GET());
    }

    /**
     * Delivers an entry as the script of a phone does, under its key.
     *
     * @param token what {@link #deliveryToken} gave
     */
    public HttpResponse<String> deliver(String path, UUID key, String token, Map<String, String> answers)
            throws IOException, InterruptedException {
        return send(entry(path, key, token)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(joined(answers))));
    }

    /** The same with a picture beside the answers. */
    public HttpResponse<String> deliver(
            String path, UUID key, String token, Map<String, String> answers, byte[] picture)
            throws IOException, InterruptedException {
        return send(entry(path, key, token)
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .POST(HttpRequest.BodyPublishers.ofByteArray(parts(answers, "photo.jpg", picture))));
    }

    /** What a delivery must carry, for as long as the sign-in lasts. */
    public String deliveryToken() throws IOException, InterruptedException {
        return found(JSON_TOKEN, get("phone/token"));
    }

    /** Opens a page with a form and sends the form with a file. */
    public HttpResponse<String> upload(String page, String target, String name, byte[] file)
            throws IOException, InterruptedException {
        Map<String, String> answers = Map.of("_csrf", found(TOKEN, get(page)));
        return send(request(target)
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .POST(HttpRequest.BodyPublishers.ofByteArray(parts(answers, name, file))));
    }

    /** Opens a page with a form and sends the form with these answers to the same or another path. */
    public HttpResponse<String> fill(String page, String target, Map<String, String> answers)
            throws IOException, InterruptedException {
        Map<String, String> all = new LinkedHashMap<>(answers);
        all.put("_csrf", found(TOKEN, get(page)));
        return post(target, all);
    }

    /** Sends a form as it is; its token is one of the answers. */
    public HttpResponse<String> post(String target, Map<String, String> answers)
            throws IOException, InterruptedException {
        return send(request(target)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(joined(answers))));
    }

    /** The cookies of this visitor as a request carries them, for one that is written by hand. */
    public String cookies() {
        return cookies.getCookieStore().get(home).stream()
                .map(cookie -> cookie.getName() + "=" + cookie.getValue())
                .collect(Collectors.joining("; "));
    }

    /** The token of the form on a page. */
    public String token(String page) throws IOException, InterruptedException {
        return found(TOKEN, get(page));
    }

    private HttpRequest.Builder entry(String path, UUID key, String token) {
        return request(path)
                .header("Idempotency-Key", "\"" + key + "\"")
                .header("Accept", "application/json")
                .header("X-CSRF-TOKEN", token);
    }

    private static String found(Pattern pattern, HttpResponse<String> page) {
        Matcher match = pattern.matcher(page.body());
        if (!match.find()) {
            throw new IllegalStateException("No form on " + page.uri() + ", which answered " + page.statusCode());
        }
        return match.group(1);
    }

    /** Answers as a form is sent. */
    public static String joined(Map<String, String> answers) {
        return answers.entrySet().stream()
                .map(answer -> encoded(answer.getKey()) + "=" + encoded(answer.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static byte[] parts(Map<String, String> answers, String name, byte[] file) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Map.Entry<String, String> answer : answers.entrySet()) {
            body.write(("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + answer.getKey() + "\"\r\n\r\n"
                            + answer.getValue() + "\r\n")
                    .getBytes(StandardCharsets.UTF_8));
        }
        body.write(("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                        + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.write(file);
        body.write(("\r\n--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return body.toByteArray();
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(home.resolve(path)).timeout(patience);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
