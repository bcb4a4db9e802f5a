package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.invented.InventedShop;
import patinary.testing.PageShape;
import patinary.testing.ShopTest;

/**
 * Every page that a link leads to asks the database a few questions, as many in a big shop as in a small one. The embedded database counts
 * them; the other is asked the same.
 */
@ShopTest
class StatementsIT {

    private static final long MOST = 12;
    private static final Path KNOWN = Path.of("src", "test", "resources", "statements.txt");
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");

    @TempDir
    private Path folder;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    private final Map<String, Long> counted = new TreeMap<>();

    @BeforeEach
    void count() {
        assumeTrue(System.getProperty("patinary.test.database", "h2").equals("h2"), "counted by the embedded database");
        jdbc.sql("set query_statistics_max_entries 1000").update();
    }

    @AfterEach
    void countNoMore() {
        if (System.getProperty("patinary.test.database", "h2").equals("h2")) {
            jdbc.sql("set query_statistics false").update();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {30, 120})
    void areAsManyInABigShopAsInASmallOne(int pieces) throws Exception {
        Path zip = folder.resolve("invented.zip");
        new InventedShop(5, pieces).write(zip);
        archive.load(zip, Progress.SILENT);
        Set<String> seen = new HashSet<>();
        Deque<String> ahead = new ArrayDeque<>(List.of("/"));
        while (!ahead.isEmpty()) {
            String path = ahead.poll();
            if (!PageShape.isFile(path) && seen.add(shape(path))) {
                ahead.addAll(look(path));
            }
        }
        Map<String, Long> known = known();
        assertThat(counted)
                .hasSizeGreaterThan(150)
                .allSatisfy((page, statements) ->
                        assertThat(statements).as(page).isLessThanOrEqualTo(known.getOrDefault(page, MOST)));
        assertThat(counted.keySet()).as("pages named are still there").containsAll(known.keySet());
    }

    /** The pages that may ask more, each with how much. */
    private static Map<String, Long> known() throws IOException {
        return Files.readAllLines(KNOWN).stream()
                .filter(line -> line.startsWith("/"))
                .map(line -> line.split(" "))
                .collect(Collectors.toMap(line -> line[0], line -> Long.valueOf(line[1])));
    }

    /** A label's short address leads to a piece each. */
    private static String shape(String path) {
        return PageShape.of(path).replaceAll("^/p/.*", "/p/one");
    }

    private List<String> look(String path) throws Exception {
        jdbc.sql("set query_statistics false").update();
        jdbc.sql("set query_statistics true").update();
        MockHttpServletResponse answer = mvc.perform(get(path).with(patinary.testing.InventedShop.owner()))
                .andReturn()
                .getResponse();
        long statements = jdbc.sql("select coalesce(sum(execution_count), 0) from information_schema.query_statistics"
                        + " where lower(sql_statement) not like 'set %' and lower(sql_statement) <> 'commit'")
                .query(Long.class)
                .single();
        if (answer.getStatus() != 200) {
            return List.of();
        }
        counted.merge(shape(path), statements, Math::max);
        return LINK.matcher(answer.getContentAsString())
                .results()
                .map(found -> found.group(1).replace("&amp;", "&"))
                .toList();
    }
}
