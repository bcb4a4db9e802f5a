package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;
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
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.invented.InventedShop;
import patinary.testing.PageShape;
import patinary.testing.QueryPlans;
import patinary.testing.ShopTest;
import patinary.testing.StatementLog;

/**
 * Every page that a link leads to asks the database a few questions, as many in a big shop as in a small one. On the
 * server none of them reads a large table whole to pick from it, but for those that are about the whole shop.
 */
@ShopTest
@Import(StatementLog.class)
class StatementsIT {

    private static final long MOST = 12;
    private static final Path KNOWN = Path.of("src", "test", "resources", "statements.txt");
    private static final Path WHOLE_READS = Path.of("src", "test", "resources", "whole-reads.txt");
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");

    @TempDir
    private Path folder;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private DataSource store;

    @Autowired
    private StatementLog log;

    private final Map<String, Long> counted = new TreeMap<>();
    private final Map<String, List<String>> picked = new TreeMap<>();
    private @Nullable QueryPlans plans;

    @ParameterizedTest
    @ValueSource(ints = {30, 120})
    void areAsManyInABigShopAsInASmallOne(int pieces) throws Exception {
        Path zip = folder.resolve("invented.zip");
        new InventedShop(5, pieces).write(zip);
        archive.load(zip, Progress.SILENT);
        plans = System.getProperty("patinary.test.database", "h2").equals("postgresql") ? plans() : null;
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
        Set<String> wholeReads = wholeReads();
        assertThat(picked)
                .as("large tables that are read whole to pick from them")
                .allSatisfy(
                        (page, reads) -> assertThat(wholeReads).as("%s", reads).contains(page));
        assertThat(counted.keySet()).as("pages named are still there").containsAll(wholeReads);
    }

    private static Set<String> wholeReads() throws IOException {
        return Files.readAllLines(WHOLE_READS).stream()
                .filter(line -> line.startsWith("/"))
                .map(line -> line.substring(0, line.indexOf(' ')))
                .collect(Collectors.toSet());
    }

    /** Every table that grows with the shop. */
    private QueryPlans plans() {
        jdbc.sql("analyze").update();
        Set<String> large = Set.copyOf(
                jdbc.sql("select relname from pg_class where relkind = 'r' and reltuples >= 150 and relnamespace ="
                                + " (select oid from pg_namespace where nspname = 'public')")
                        .query(String.class)
                        .list());
        return new QueryPlans(store, large);
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
        log.take();
        MockHttpServletResponse answer = mvc.perform(get(path).with(patinary.testing.InventedShop.owner()))
                .andReturn()
                .getResponse();
        List<StatementLog.Asked> asked = log.take();
        if (answer.getStatus() != 200) {
            return List.of();
        }
        counted.merge(shape(path), (long) asked.size(), Math::max);
        if (plans != null) {
            List<String> whole = plans.wholeReads(asked);
            if (!whole.isEmpty()) {
                picked.put(shape(path), whole);
            }
        }
        return LINK.matcher(answer.getContentAsString())
                .results()
                .map(found -> found.group(1).replace("&amp;", "&"))
                .toList();
    }
}
