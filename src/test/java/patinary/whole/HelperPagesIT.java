package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/**
 * A helper goes through the demo shop by every link she is shown: each opens, and none tells what things cost the shop or what
 * it earns.
 */
@ShopTest
class HelperPagesIT {

    /** Rows of the same kind of page that are looked at: states differ, as of a piece on the bench and one sold. */
    private static final int OF_A_KIND = 2;

    /** Words that go with costs, profit and the shop's whole. */
    private static final Pattern TELLING = Pattern.compile(
            "profit|margin|landed|(?<!Water )\\bcosts?\\b|cost left|an hour|per hour|return on|worth [^<]*\\$|postings|\\bfees?\\b:?</d|what to pay",
            Pattern.CASE_INSENSITIVE);

    /** What tells how a form is meant says the same to everybody. */
    private static final Pattern MEANT = Pattern.compile("<p class=\"(?:hint|soft)\"[^>]*>[^<]*</p>");

    private static final Pattern LINK = Pattern.compile("<(?:a|form)\\b[^>]*\\b(?:href|action)=\"(/[^\"]*)\"");
    private static final Pattern MAIN = Pattern.compile("<main\\b.*?</main>", Pattern.DOTALL);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private JdbcClient jdbc;

    private final List<String> faults = new ArrayList<>();

    @BeforeEach
    void demo() throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
    }

    @Test
    void tellHerNothingOfCostsAndLeadNowhereClosed() throws Exception {
        Map<String, Integer> seen = new HashMap<>();
        Deque<String> ahead = new ArrayDeque<>(List.of("/", "/sales/new", "/buy", "/stall", "/bench/now", "/count"));
        while (!ahead.isEmpty()) {
            String path = ahead.poll();
            if (seen.merge(shape(path), 1, Integer::sum) <= OF_A_KIND) {
                ahead.addAll(look(path));
            }
        }
        assertThat(faults).isEmpty();
        assertThat(open("/phone/lists").getContentAsString())
                .contains("\"bench-pieces\"")
                .doesNotContain("\"advice\"");
        assertThat(seen).hasSizeGreaterThan(40).containsKey("/pieces/one").containsKey("/receipts/one");
    }

    /** Pieces that cost something: the landed cost, to the cent, stands nowhere on its page. */
    @Test
    void showNoLandedCostOnAnyPiece() throws Exception {
        List<Map<String, Object>> rows = jdbc.sql("""
                        select cast(f.piece_id as varchar(36)) as id, f.landed_minor as cost from piece_figures f
                        where f.landed_minor > 0 order by f.piece_id fetch first 4 rows only
                        """).query().listOfRows();
        assertThat(rows).hasSize(4);
        for (Map<String, Object> row : rows) {
            long cost = ((Number) row.get("cost")).longValue();
            String page = open("/pieces/" + row.get("id")).getContentAsString();
            assertThat(page).doesNotContain("$%d.%02d".formatted(cost / 100, cost % 100));
        }
    }

    private List<String> look(String path) throws Exception {
        MockHttpServletResponse answer = open(path);
        if (path.equals("/phone/sign-in") || path.matches(".*\\.pdf(\\?.*)?")) {
            return List.of();
        }
        if (answer.getStatus() != 200) {
            faults.add(path + " answered " + answer.getStatus());
            return List.of();
        }
        String page = answer.getContentAsString();
        Matcher main = MAIN.matcher(page);
        boolean ofProgram = path.matches("/(guide|handbook|help).*");
        if (!ofProgram && main.find()) {
            String text = MEANT.matcher(main.group()).replaceAll("").replaceAll("\\s(?!value)[a-z:-]+=\"[^\"]*\"", " ");
            Matcher telling = TELLING.matcher(text);
            while (telling.find()) {
                faults.add(path + " says " + text.substring(Math.max(0, telling.start() - 40), telling.end()));
            }
        }
        List<String> links = new ArrayList<>();
        Matcher link = LINK.matcher(page);
        while (link.find()) {
            if (!link.group().contains("method=\"post\"")) {
                links.add(link.group(1).replace("&amp;", "&").replaceAll("#.*", ""));
            }
        }
        return ofProgram ? List.of() : links;
    }

    private MockHttpServletResponse open(String path) throws Exception {
        return mvc.perform(get(URI.create(path)).with(InventedShop.helper()))
                .andReturn()
                .getResponse();
    }

    private static String shape(String path) {
        return path.replaceAll("[?#].*", "")
                .replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "one")
                .replaceAll("/(guide|handbook)/[a-z0-9-]+", "/$1/one")
                .replaceAll("^/(css|js|img)/.*", "/$1");
    }
}
