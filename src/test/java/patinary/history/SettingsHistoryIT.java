package patinary.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.ledger.Check;
import patinary.ledger.Trail;
import patinary.testing.CleanShop;
import patinary.testing.PageForm;
import patinary.testing.ShopTest;

/** Who changed the settings, and taking it back. All names are invented. */
@ShopTest
class SettingsHistoryIT {

    private static final Subject SETTINGS = new Subject(Trail.SETTINGS, Trail.THE_SHOP);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Changes changes;

    @TempDir
    private Path folder;

    @Test
    void thePageOfTheSettingsTellsWhoChangedWhat() throws Exception {
        settings(Map.of("shopName", "Moss and Thimble", "hourlyRate", "31.50"))
                .andExpect(flash().attributeExists("undoable"));

        Change changed = latest();
        assertThat(changed.who()).isEqualTo("Robin");
        assertThat(changed.cameBy()).isEqualTo(CameBy.FORM);
        assertThat(Differences.between(changed.before(), changed.after()))
                .singleElement()
                .satisfies(row -> assertThat(row.cells())
                        .extracting(Differences.Cell::column)
                        .containsExactly("name", "hourly_rate"));
        page("/shop")
                .andExpect(content().string(containsString("History: one change")))
                .andExpect(content().string(containsString("<ins>Moss and Thimble</ins>")))
                .andExpect(content().string(containsString("<ins>$31.50</ins>")))
                .andExpect(content().string(not(containsString("??"))));
        page("/history").andExpect(content().string(containsString("Settings: Moss and Thimble")));

        String old = version();
        undo(changed);
        assertThat(name()).isNotEqualTo("Moss and Thimble");
        assertThat(latest().after()).isEqualTo(changed.before());
        assertThat(version()).as("a form of before is told that it is old").isNotEqualTo(old);
    }

    @Test
    void savingTheSameLeavesNoTrace() throws Exception {
        settings(Map.of());

        assertThat(changes.of(SETTINGS, 9)).isEmpty();
    }

    @Test
    void anotherMethodOfCostingIsTakenBackWithAllThatItPosted() throws Exception {
        CleanShop.empty(program);
        program.getBean(ShopArchive.class).load(Path.of("db", "demo"), Progress.SILENT);
        List<Map<String, Object>> first = postings();
        settings(Map.of("costingMethod", "AVERAGE"));
        List<Map<String, Object>> average = postings();
        assertThat(average).isNotEqualTo(first);
        page("/shop").andExpect(content().string(containsString("all alike, at the average cost")));

        undo(latest());
        assertThat(postings()).isEqualTo(first);
        assertThat(program.getBean(Check.class).run()).isEmpty();

        undo(latest());
        assertThat(postings()).isEqualTo(average);
    }

    /** What she says once for the whole shop, on pages of their own. */
    @Test
    void whatSheSaysOnceIsKeptAndTakenBackToo() throws Exception {
        Map<String, List<Map<String, Object>>> before = said();
        save("/shop/aims", Map.of("horizonDays", "90", "target", "12"));
        save("/mark-downs/plan", Map.of("rows[0].days", "40", "rows[0].percent", "15"));
        save("/year/2025/basis", Map.of("income", "CASH", "supplies", "WHEN_BOUGHT", "sure", "true"));
        save("/year/2025/set-aside/percent", Map.of("income", "22", "state", "5"));
        save("/year/2025/home", Map.of("feet", "120", "months", "7"));
        save(
                "/year/2025/lines/change?account=EXPENSE&category=software",
                Map.of("line", "other_expenses", "years", "onward"));
        assertThat(said())
                .allSatisfy((table, rows) -> assertThat(rows).as(table).isNotEmpty());
        List<Change> all = changes.of(SETTINGS, 9);
        assertThat(all).hasSize(6);
        page("/shop")
                .andExpect(content().string(containsString("History: 6 changes")))
                .andExpect(content().string(not(containsString("??"))));

        for (Change change : all) {
            undo(change);
        }
        assertThat(said()).isEqualTo(before);
    }

    @Test
    void whatASealedYearWasCountedByStays() throws Exception {
        save("/year/2025/basis", Map.of("income", "CASH", "supplies", "WHEN_USED", "sure", "true"));
        Change basis = latest();
        settings(Map.of("taxTable", "plain"));
        Change table = latest();
        settings(Map.of("hourlyRate", "31.50"));
        Change rate = latest();
        send(post("/year/2025/seal").param("sure", "true").param("nonetheless", "true"))
                .andExpect(status().is3xxRedirection());

        undo(rate);
        for (Change change : List.of(table, basis)) {
            send(post("/history/" + change.act() + "/undo"))
                    .andExpect(status().is(422))
                    .andExpect(content().string(containsString("lies in a sealed year")));
        }
    }

    @Test
    void itTravelsInABackup() throws Exception {
        settings(Map.of("shopName", "Moss and Thimble"));
        Change changed = latest();
        Path file = folder.resolve("shop.zip");
        try (var stream = Files.newOutputStream(file)) {
            program.getBean(ShopArchive.class).backup(stream, Progress.SILENT);
        }
        CleanShop.empty(program);
        program.getBean(ShopArchive.class).load(file, Progress.SILENT);

        assertThat(changes.of(SETTINGS, 9)).containsExactly(changed);
    }

    private Change latest() {
        return changes.of(SETTINGS, 1).get(0);
    }

    private String name() {
        return jdbc.sql("select name from shop").query(String.class).single();
    }

    private String version() {
        return jdbc.sql("select version from shop").query(String.class).single();
    }

    private Map<String, List<Map<String, Object>>> said() {
        Map<String, List<Map<String, Object>>> said = new TreeMap<>();
        for (String table :
                List.of("aim", "mark_down_step", "tax_basis", "set_aside_year", "home_use", "tax_mapping")) {
            said.put(
                    table,
                    jdbc.sql("select * from " + table).query().listOfRows().stream()
                            .toList());
        }
        return said;
    }

    private List<Map<String, Object>> postings() {
        return jdbc.sql("select document_id, line, account, amount_minor, quantity, piece_id from posting"
                        + " order by document_id, line")
                .query()
                .listOfRows();
    }

    private ResultActions settings(Map<String, String> changed) throws Exception {
        return save("/shop", changed);
    }

    /** Sends what stands in the form of a page, with other answers. */
    private ResultActions save(String path, Map<String, String> changed) throws Exception {
        String page = page(path).andReturn().getResponse().getContentAsString();
        String action = path.replaceAll("\\?.*", "");
        Map<String, String> answers = new TreeMap<>();
        PageForm.on(page).stream()
                .filter(one -> one.action().equals(action))
                .forEach(one -> answers.putAll(one.answers()));
        answers.putAll(changed);
        MockHttpServletRequestBuilder post = post(action);
        answers.forEach(post::param);
        return send(post).andExpect(status().is3xxRedirection());
    }

    private void undo(Change change) throws Exception {
        send(post("/history/" + change.act() + "/undo")).andExpect(status().is3xxRedirection());
    }

    private ResultActions send(MockHttpServletRequestBuilder form) throws Exception {
        return mvc.perform(form.with(owner()));
    }

    private ResultActions page(String path) throws Exception {
        return mvc.perform(get(path).with(owner())).andExpect(status().isOk());
    }
}
