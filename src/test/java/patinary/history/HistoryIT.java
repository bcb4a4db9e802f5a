package patinary.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.exchange.ShopArchive;
import patinary.history.Change.What;
import patinary.ledger.Books;
import patinary.ledger.Check;
import patinary.money.Amount;
import patinary.selling.Postage;
import patinary.testing.ShopTest;
import patinary.testing.StatementLog;
import patinary.testing.Trestle;
import patinary.web.Window;

/** Who changed what, and taking it back. All names are invented. */
@ShopTest
@Import(StatementLog.class)
class HistoryIT {

    private static final LocalDate SOLD = LocalDate.of(2025, 3, 10);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Changes changes;

    @Autowired
    private StatementLog asked;

    private Trestle trestle;

    @BeforeEach
    void pieces() {
        trestle = new Trestle(program);
        trestle.piece("Tin tray", "Box 1");
        trestle.piece("Enamel jug", "Box 1");
    }

    @Test
    void aSaleIsRecordedChangedAndRemovedAndEachIsTakenBack() throws Exception {
        List<Map<String, Object>> nothingSold = postings();
        UUID id = sell("P0001", "20");
        assertThat(of("sale", id)).extracting(Change::what).containsExactly(What.RECORDED);
        Change recorded = of("sale", id).get(0);
        assertThat(recorded.who()).isEqualTo("Robin");
        assertThat(recorded.cameBy()).isEqualTo(CameBy.FORM);
        assertThat(recorded.day()).isEqualTo(SOLD);
        List<Map<String, Object>> sold = postings();

        send(change(id, "25")).andExpect(status().is3xxRedirection()).andExpect(flash().attributeExists("undoable"));
        Change changed = of("sale", id).get(0);
        assertThat(Differences.between(changed.before(), changed.after()))
                .extracting(Differences.RowChange::table, Differences.RowChange::cells)
                .contains(tuple("sale_line", List.of(new Differences.Cell("price", "20.00", "25.00"))));
        page("/sales/" + id)
                .andExpect(content().string(containsString("History: 2 changes")))
                .andExpect(content().string(containsString("<del>$20.00</del>")));
        page("/history/" + changed.act())
                .andExpect(content().string(containsString("Sale of 10 Mar 2025")))
                .andExpect(content().string(not(containsString("??"))));

        send(post("/sales/" + id + "/remove")).andExpect(status().is3xxRedirection());
        assertThat(of("sale", id).get(0).what()).isEqualTo(What.REMOVED);
        assertThat(postings()).isEqualTo(nothingSold);

        undo(changed)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Undo the later change first")));

        undo(of("sale", id).get(0)).andExpect(status().is3xxRedirection());
        assertThat(of("sale", id).get(0).cameBy()).isEqualTo(CameBy.UNDO);
        page("/sales/" + id).andExpect(content().string(containsString("$25.00")));

        send(change(id, "20")).andExpect(status().is3xxRedirection());
        assertThat(postings()).isEqualTo(sold);
        Change again = of("sale", id).get(0);
        undo(again).andExpect(status().is3xxRedirection());
        assertThat(of("sale", id).get(0).after()).isEqualTo(again.before());
        undo(of("sale", id).get(0)).andExpect(status().is3xxRedirection());
        assertThat(postings()).isEqualTo(sold);
        page("/history").andExpect(content().string(containsString("by undoing")));
    }

    /** What the changes name is read together, however many they are. */
    @Test
    void aLongHistoryAsksNoMoreThanAShortOne() throws Exception {
        UUID id = sell("P0001", "20");
        send(change(id, "25")).andExpect(status().is3xxRedirection());
        int few = questions("/sales/" + id);
        for (int price = 26; price < 32; price++) {
            send(change(id, String.valueOf(price))).andExpect(status().is3xxRedirection());
        }
        page("/sales/" + id).andExpect(content().string(containsString("History: 8 changes")));
        assertThat(questions("/sales/" + id)).isEqualTo(few).isPositive();
        assertThat(questions("/history")).isBetween(2, 8);
    }

    private int questions(String page) throws Exception {
        asked.take();
        page(page);
        return asked.take().size();
    }

    @Test
    void whatOthersRestOnIsNotTakenBack() throws Exception {
        UUID id = sell("P0001", "20");
        program.getBean(Books.class)
                .record(new Postage(UUID.randomUUID(), SOLD, "", id, trestle.cash, Amount.of(300), Amount.ZERO, false));

        undo(of("sale", id).get(0))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Something else names")));
        assertThat(of("sale", id)).hasSize(1);
        assertThat(changes.page(new Changes.Wanted(null, null, "", "postage"), Window.of(1))
                        .rows())
                .extracting(Change::cameBy, Change::who)
                .containsExactly(tuple(CameBy.COMMAND, ""));
    }

    @Test
    void aSealedYearForbidsIt() throws Exception {
        UUID id = sell("P0001", "20");
        send(post("/year/2025/seal").param("sure", "true").param("nonetheless", "true"))
                .andExpect(status().is3xxRedirection());

        undo(of("sale", id).get(0))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("lies in a sealed year")));
        UUID seal = jdbc.sql("select id from year_seal").query(UUID.class).single();
        undo(of("year_seal", seal).get(0))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("on the page of its year")));
    }

    @Test
    void placesVehiclesFinishesAndNamesAreTakenBack() throws Exception {
        comesChangesAndGoes(
                "money_place",
                post("/money-places/new").param("kind", "BANK"),
                id -> post("/money-places/" + id).param("kind", "BANK"));
        comesChangesAndGoes(
                "vehicle",
                post("/vehicles/new").param("id", UUID.randomUUID().toString()),
                id -> post("/vehicles/" + id));
        comesChangesAndGoes("object_kind", post("/pieces/kinds"), id -> post("/pieces/kinds/" + id));
        comesChangesAndGoes("style", post("/pieces/styles"), id -> post("/pieces/styles/" + id));
        comesChangesAndGoes(
                "finish",
                post("/finishes/new").param("id", UUID.randomUUID().toString()).param("steps[0].what", "Sand"),
                id -> post("/finishes/" + id + "/edit").param("steps[0].what", "Sand twice"));
        assertThat(program.getBean(Check.class).run()).isEmpty();
    }

    private void comesChangesAndGoes(
            String table, MockHttpServletRequestBuilder add, Function<UUID, MockHttpServletRequestBuilder> change)
            throws Exception {
        send(add.param("name", "Rosewood (invented)")).andExpect(status().is3xxRedirection());
        UUID id = jdbc.sql("select id from " + table + " where name = 'Rosewood (invented)'")
                .query(UUID.class)
                .single();
        send(change.apply(id).param("version", "0").param("name", "Rosehip (invented)"))
                .andExpect(status().is3xxRedirection());
        List<Change> done = of(table, id);
        assertThat(done).as(table).extracting(Change::what).containsExactly(What.CHANGED, What.RECORDED);

        page("/history/" + done.get(0).act()).andExpect(content().string(not(containsString("??"))));
        undo(done.get(0)).andExpect(status().is3xxRedirection());
        assertThat(jdbc.sql("select name from " + table + " where id = ?")
                        .param(id)
                        .query(String.class)
                        .single())
                .isEqualTo("Rosewood (invented)");
        undo(done.get(1)).andExpect(status().is3xxRedirection());
        assertThat(jdbc.sql("select count(*) from " + table + " where id = ?")
                        .param(id)
                        .query(Long.class)
                        .single())
                .as(table)
                .isZero();
    }

    @Test
    void whatIsRefusedLeavesNoTrace() throws Exception {
        UUID first = sell("P0001", "20");
        UUID second = UUID.randomUUID();
        send(sale(second, "P0001", "20")).andExpect(status().is(422));

        assertThat(of("sale", second)).isEmpty();
        assertThat(of("sale", first)).hasSize(1);
    }

    @Test
    void theListIsFiltered() throws Exception {
        sell("P0001", "20");
        page("/history?kind=sale").andExpect(content().string(containsString("Sale of 10 Mar 2025")));
        page("/history?kind=trip").andExpect(content().string(containsString("Nothing was changed that fits")));
        page("/history?day=1999-01-01").andExpect(content().string(containsString("Nothing was changed that fits")));
        page("/history?who=Robin&kind=sale").andExpect(content().string(containsString("Sale of 10 Mar 2025")));
        page("/history?day=nonsense").andExpect(content().string(containsString("Sale of 10 Mar 2025")));
        mvc.perform(get("/history/" + UUID.randomUUID()).with(owner())).andExpect(status().isNotFound());
    }

    /** Invented: sales that come, change and go, expenses, and a code, in an order that the seed draws. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void whateverWasDoneUndoingAllOfItGivesTheSameArchive(long seed, @TempDir Path folder) throws Exception {
        UUID first = sell("P0001", "20");
        Map<String, String> before = archive(folder.resolve("before"));
        Random random = new Random(seed);
        List<UUID> acts = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            long known = count();
            draw(random, first);
            if (count() > known) {
                acts.add(changes.page(new Changes.Wanted(null, null, "", ""), Window.of(1))
                        .rows()
                        .get(0)
                        .act());
            }
        }
        assertThat(acts).as("what was drawn").hasSizeGreaterThan(6);
        assertThat(archive(folder.resolve("between"))).isNotEqualTo(before);

        for (int i = acts.size() - 1; i >= 0; i--) {
            send(post("/history/" + acts.get(i) + "/undo")).andExpect(status().is3xxRedirection());
        }

        assertThat(archive(folder.resolve("after"))).isEqualTo(before);
        assertThat(program.getBean(Check.class).run()).isEmpty();
    }

    private void draw(Random random, UUID first) throws Exception {
        List<UUID> sales = jdbc.sql("select id from sale where id <> ? order by id")
                .param(first)
                .query(UUID.class)
                .list();
        String price = String.valueOf(10 + random.nextInt(40));
        switch (random.nextInt(5)) {
            case 0 -> send(change(first, price));
            case 1 -> send(sale(UUID.randomUUID(), "P0002", price));
            case 2 -> {
                if (!sales.isEmpty()) {
                    send(post("/sales/" + sales.get(0) + "/remove"));
                }
            }
            case 3 ->
                send(post("/expenses/new")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", SOLD.toString())
                        .param("category", "software")
                        .param("payee", "Web host (invented)")
                        .param("placeId", trestle.cash.toString())
                        .param("amount", price));
            default ->
                send(post("/sales/" + first + "/posted")
                        .param("day", SOLD.plusDays(random.nextInt(9)).toString()));
        }
    }

    private long count() {
        return jdbc.sql("select count(*) from history").query(Long.class).single();
    }

    /** Every file but the history itself and the manifest that names it. */
    private Map<String, String> archive(Path folder) throws Exception {
        program.getBean(ShopArchive.class).exportFolder(folder, (file, rows) -> {});
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        files.keySet().removeAll(List.of("history.csv", "manifest.csv"));
        return files;
    }

    private List<Change> of(String kind, UUID id) {
        return changes.of(new Subject(kind, id), 20);
    }

    private ResultActions undo(Change change) throws Exception {
        return send(post("/history/" + change.act() + "/undo"));
    }

    private UUID sell(String code, String price) throws Exception {
        UUID id = UUID.randomUUID();
        send(sale(id, code, price)).andExpect(status().is3xxRedirection());
        return id;
    }

    private MockHttpServletRequestBuilder sale(UUID id, String code, String price) {
        return fields(post("/sales/new"), code, price).param("id", id.toString());
    }

    private MockHttpServletRequestBuilder change(UUID id, String price) {
        long version = jdbc.sql("select version from document where id = ?")
                .param(id)
                .query(Long.class)
                .single();
        return fields(post("/sales/" + id + "/edit"), "P0001", price).param("version", String.valueOf(version));
    }

    private MockHttpServletRequestBuilder fields(MockHttpServletRequestBuilder form, String code, String price) {
        return form.param("date", SOLD.toString())
                .param("channel", trestle.stall.toString())
                .param("buyer", "Ann Invented")
                .param("lines[0].codes", code)
                .param("lines[0].price", price);
    }

    private ResultActions send(MockHttpServletRequestBuilder form) throws Exception {
        return mvc.perform(form.with(owner()));
    }

    private ResultActions page(String path) throws Exception {
        return mvc.perform(get(path).with(owner())).andExpect(status().isOk());
    }

    private List<Map<String, Object>> postings() {
        return jdbc.sql(
                        "select document_id, line, doc_date, account, amount_minor from posting order by document_id, line")
                .query()
                .listOfRows();
    }
}
