package patinary.testing;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A person without a browser: keeps cookies, and sends forms with the token that their page carries. */
public final class Visitor {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NEVER)
            .connectTimeout(PATIENCE)
            .build();
    private final Duration patience;
    private URI home = URI.create("http://localhost/");

    public Visitor() {
        this(PATIENCE);
    }

    /** Waits for each answer as long as is said here. */
    public Visitor(Duration patience) {
        this.patience = patience;
    }

    /** Goes to the program at a port; cookies are kept, as a browser keeps them for a host. */
    public void visit(int port) {
        home = URI.create("http://localhost:" + port + "/");
    }

    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(request(path).GET());
    }

    /** Opens a page with a form and sends the form with these answers to the same or another path. */
    public HttpResponse<String> fill(String page, String target, Map<String, String> answers)
            throws IOException, InterruptedException {
        HttpResponse<String> form = get(page);
        Matcher token = TOKEN.matcher(form.body());
        if (!token.find()) {
            throw new IllegalStateException("No form on " + page + ", which answered " + form.statusCode());
        }
        String body = "_csrf=" + encoded(token.group(1)) + "&"
                + answers.entrySet().stream()
                        .map(answer -> encoded(answer.getKey()) + "=" + encoded(answer.getValue()))
                        .collect(Collectors.joining("&"));
        return send(request(target)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
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
