package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ConnectException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.web.util.HtmlUtils;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;
import patinary.testing.Visitor;

/**
 * The packaged program ends in order when it is told to: it answers what it has begun, and the store is whole. Before that, on
 * PostgreSQL, its server goes away under a page that is filled in, and it goes on by itself when the server is back.
 */
class EndAndOutageIT {

    private static final boolean ON_SERVER =
            System.getProperty("patinary.test.database", "h2").equals("postgresql");

    /** What a program ends with that was ended by signal 15, as POSIX shells count it. */
    private static final int TOLD_TO_END = 128 + 15;

    private static final int VISITS = 10;

    private static final Pattern KEPT = Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\">");

    @TempDir(cleanup = CleanupMode.ON_SUCCESS)
    private Path folder;

    private final Visitor visitor = new Visitor();
    private final Told told = new Told();

    @Test
    void keepsWhatWasTypedWhileItsServerIsAwayAndAnswersWhatIsUnderWayBeforeItEnds() throws Exception {
        try (ForcingServer server = new ForcingServer(folder.resolve("server"))) {
            if (ON_SERVER) {
                server.start();
            }
            try (JarProgram program = JarProgram.start(folder.resolve("program.log"), properties(server))) {
                visitor.visit(program.port());
                CrashIT.openShop(visitor);
                if (ON_SERVER) {
                    loseAndFind(server);
                }
                endWhileAFormIsUnderWay(program);
            }
            String url = ON_SERVER ? server.url() : "";
            assertThat(new AfterDeath(folder, url).faults(told)).isEmpty();
        }
    }

    private List<String> properties(ForcingServer server) {
        List<String> properties = new ArrayList<>();
        properties.add("patinary.setup-code=" + TestDatabase.SETUP_CODE);
        properties.add("patinary.data=" + folder);
        if (ON_SERVER) {
            properties.add("spring.datasource.url=" + server.url());
            properties.add("spring.datasource.username=postgres");
            properties.add("spring.datasource.password=");
            // Told off sooner than in a shop, where a server may take a while to come back.
            properties.add("spring.datasource.hikari.connection-timeout=1000");
        }
        return properties;
    }

    /** The page was filled while the server was there, and is sent while it is not. */
    private void loseAndFind(ForcingServer server) throws IOException, InterruptedException {
        UUID receipt = UUID.randomUUID();
        Map<String, String> filled = purchase(receipt, "Tin of \"odd\" buttons");
        server.close();

        HttpResponse<String> away = visitor.post("receipts", filled);
        assertThat(away.statusCode()).isEqualTo(503);
        assertThat(away.headers().firstValue("Retry-After")).contains("10");
        assertThat(away.body())
                .contains("The store of the shop cannot be reached", "<li>Tin of &quot;odd&quot; buttons</li>");
        assertThat(visitor.post("receipts", kept(away)).statusCode()).isEqualTo(503);

        server.start();
        HttpResponse<String> back = visitor.post("receipts", kept(away));
        // The answer says to try again after ten seconds; no sooner is it sure that the program has found its server.
        for (int second = 0; back.statusCode() == 503 && second < 10; second++) {
            Thread.sleep(1000);
            back = visitor.post("receipts", kept(away));
        }
        assertThat(back.statusCode()).as(back.body()).isEqualTo(303);
        assertThat(visitor.get("receipts/" + receipt).body()).contains("Tin of &quot;odd&quot; buttons");
        told.documents.put(receipt, "receipt");
    }

    private void endWhileAFormIsUnderWay(JarProgram program) throws IOException, InterruptedException {
        UUID receipt = UUID.randomUUID();
        try (HalfSent form = new HalfSent(program.port(), visitor, "/receipts", purchase(receipt, "Bread board"))) {
            // Whole other visits lie between, so that the half is in work and not only in line; on a busy machine one
            // did not suffice.
            for (int visit = 0; visit < VISITS; visit++) {
                assertThat(visitor.get("receipts").statusCode()).isEqualTo(200);
            }
            program.tellToEnd();
            Awaitility.await()
                    .atMost(20, TimeUnit.SECONDS)
                    .pollInterval(50, TimeUnit.MILLISECONDS)
                    .until(() -> takesNoMore(program));

            assertThat(form.send()).startsWith("HTTP/1.1 303");
        }
        assertThat(program.ended()).isEqualTo(TOLD_TO_END);
        told.documents.put(receipt, "receipt");
    }

    private Map<String, String> purchase(UUID receipt, String title) throws IOException, InterruptedException {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("_csrf", visitor.token("receipts/new"));
        answers.put("id", receipt.toString());
        answers.put("day", "OTHER");
        answers.put("date", "2025-03-01");
        answers.put("lines[0].kind", "PIECES");
        answers.put("lines[0].title", title);
        answers.put("lines[0].price", "4.25");
        answers.put("lines[0].quantity", "1");
        answers.put("tillTotal", "4.25");
        answers.put("paidWith", "OWNER");
        answers.put("action", "save");
        return answers;
    }

    /** What the page keeps, as its button sends it. */
    private static Map<String, String> kept(HttpResponse<String> page) {
        Map<String, String> kept = new LinkedHashMap<>();
        Matcher field = KEPT.matcher(page.body());
        while (field.find()) {
            kept.put(HtmlUtils.htmlUnescape(field.group(1)), HtmlUtils.htmlUnescape(field.group(2)));
        }
        return kept;
    }

    private boolean takesNoMore(JarProgram program) throws InterruptedException {
        Visitor stranger = new Visitor();
        stranger.visit(program.port());
        try {
            stranger.get("actuator/health");
            return false;
        } catch (ConnectException refused) {
            return true;
        } catch (IOException ending) {
            return false;
        }
    }
}
