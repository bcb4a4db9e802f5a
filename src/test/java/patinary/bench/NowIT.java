package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.supplies.SupplyCatalog;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** The bench page as it works without script; figures worked by hand. */
@ShopTest
class NowIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private BenchClock clock;

    @Autowired
    private NowChoices choices;

    private StockedBench bench;
    private final UUID id = UUID.randomUUID();

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
    }

    /** Three dabs of 2 ml of a jar of 200 ml for 20.00 = 0.60, equally: 0.30 each. */
    @Test
    void tappedMeasuresBecomeAnEntry() throws Exception {
        send(tapped().param("minutes", "20"))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/bench/now?kept=" + id));

        assertThat(bench.landed()).containsEntry("Small box", 30L).containsEntry("Long crate", 30L);
        assertThat(jdbc.sql("select typed from bench_use").query(String.class).list())
                .containsExactly("3 dabs");
        assertThat(jdbc.sql("select estimated from bench_use")
                        .query(Boolean.class)
                        .single())
                .isTrue();
        read("/bench/now?kept=" + id)
                .andExpect(content().string(containsString("Take this entry back")))
                // The supply that was used last stands first, whatever its name.
                .andExpect(content().string(containsString("name=\"uses[0].supply\" value=\"" + bench.paint)));

        mvc.perform(post("/bench/now/undo")
                        .with(InventedShop.owner())
                        .param("id", id.toString())
                        .param("version", "0"))
                .andExpect(status().isSeeOther());
        assertThat(entries()).isZero();
        assertThat(bench.paintLeft()).isEqualByComparingTo("200");
    }

    @Test
    void theEnterKeyInTheSearchFindsAndDoesNotSave() throws Exception {
        send(tapped().param("enter", "enter").param("pieceWords", "crate"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("name=\"foundBy\" value=\"crate\"")))
                .andExpect(content().string(containsString("name=\"taps[0].times\" value=\"3\"")));
        assertThat(entries()).isZero();

        send(tapped().param("enter", "enter").param("pieceWords", "crate").param("foundBy", "crate"))
                .andExpect(status().isSeeOther());
        assertThat(entries()).isOne();
    }

    /** A percent sign would find anything. */
    @Test
    void signsThatADatabaseReadsOtherwiseMeanThemselves() {
        assertThat(choices.pieces("%", List.of(), 9)).isEmpty();
        assertThat(choices.pieces("l_ng", List.of(), 9)).isEmpty();
        assertThat(choices.pieces("LONG", List.of(), 9)).hasSize(1);
    }

    @Test
    void anEntryThatWasChangedSinceIsNotTakenBack() throws Exception {
        send(tapped());
        mvc.perform(post("/bench/now/undo")
                        .with(InventedShop.owner())
                        .param("id", id.toString())
                        .param("version", "7"))
                .andExpect(status().isSeeOther());
        assertThat(entries()).isEqualTo(1);
    }

    @Test
    void whatIsWrongIsToldBesideItsFieldAndWhatWasTappedStays() throws Exception {
        send(tapped().param("uses[0].quantity", "a puddle")
                        .param("taps[1].picked", "true")
                        .param("uses[1].supply", bench.paper.toString()))
                .andExpect(status().is(422))
                .andExpect(content()
                        .string(allOf(
                                containsString("A measure is tapped and a quantity is typed"),
                                containsString("id=\"uses1.quantity-error\""),
                                containsString("value=\"a puddle\""),
                                containsString("name=\"taps[0].times\" value=\"3\""),
                                containsString("value=\"dab\" checked"),
                                containsString("Wiped down"))));
        assertThat(entries()).isZero();
    }

    @Test
    void theClockRunsWithoutThePageAndItsMinutesAreFilledIn() throws Exception {
        act("clock-go").andExpect(content().string(containsString("0 min")));
        move(25 * 60);
        act("clock-pause").andExpect(content().string(containsString("25 min")));
        move(90 * 60);
        act("clock-go");
        move(10 * 60);
        read("/bench/now").andExpect(content().string(containsString("35 min")));
        act("clock-stop")
                .andExpect(content().string(containsString("name=\"minutes\" type=\"text\" value=\"35\"")))
                .andExpect(content().string(not(containsString("35 min"))));
    }

    @Test
    void aClockThatRanOvernightAsksInsteadOfBookingIt() throws Exception {
        act("clock-go");
        move(14 * 3600);
        send(tapped())
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("It ran 14 hours: how long did you really work?")));
        assertThat(entries()).isZero();
        assertThat(clock.of(InventedShop.OWNER).timer().isOn()).isTrue();
        send(tapped().param("minutes", "40")).andExpect(status().isSeeOther());
        assertThat(jdbc.sql("select minutes from bench_entry")
                        .query(Integer.class)
                        .single())
                .isEqualTo(40);
        assertThat(clock.of(InventedShop.OWNER).timer().isOn()).isFalse();
    }

    @Test
    void anEntryRefusedForAnotherReasonLeavesTheClockRunning() throws Exception {
        act("clock-go");
        move(25 * 60);
        send(tapped().param("uses[0].quantity", "a puddle"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("name=\"minutes\" type=\"text\" value=\"\"")));
        assertThat(clock.of(InventedShop.OWNER).timer().isRunning()).isTrue();
        move(5 * 60);
        send(tapped()).andExpect(status().isSeeOther());
        assertThat(jdbc.sql("select minutes from bench_entry")
                        .query(Integer.class)
                        .single())
                .isEqualTo(30);
        assertThat(clock.of(InventedShop.OWNER).timer().isOn()).isFalse();
    }

    @Test
    void aMishapNamesItsPiece() throws Exception {
        send(tapped().param("mishaps[0].what", "Peeled")
                        .param("mishaps[0].piece", UUID.randomUUID().toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"mishaps0.piece-error\"")));
        send(tapped().param("mishaps[0].what", "Peeled").param("mishaps[0].piece", bench.crate.toString()))
                .andExpect(status().isSeeOther());
        assertThat(jdbc.sql("select piece_id from bench_mishap")
                        .query(UUID.class)
                        .single())
                .isEqualTo(bench.crate);
    }

    @Test
    void twoDevicesMeetAtTheLaterTap() throws Exception {
        long now = Instant.now().toEpochMilli();
        String wait = UUID.randomUUID().toString();
        meet("""
                {"timer": {"started": %d, "since": %d, "worked": 0, "changed": %d, "pieces": ["%s"]},
                 "waits": [{"id": "%s", "words": "Wipe back", "due": %d, "done": false}]}
                """.formatted(now - 60000, now - 60000, now, bench.box, wait, now + 600000))
                .andExpect(status().isOk());
        meet("{\"timer\": {\"worked\": 0, \"changed\": %d}}".formatted(now - 1))
                .andExpect(content().string(containsString("\"since\":" + (now - 60000))))
                .andExpect(content().string(containsString("Wipe back")));
        read("/bench/now")
                .andExpect(content().string(containsString("Wipe back")))
                .andExpect(content()
                        .string(containsString("id=\"piece-" + bench.box + "\" value=\"" + bench.box + "\" checked")));
        meet("{\"waits\": [{\"id\": \"%s\", \"words\": \"Wipe back\", \"due\": %d, \"done\": true}]}"
                        .formatted(wait, now))
                .andExpect(content().string(not(containsString("Wipe back"))));
        meet("{\"timer\": {\"since\": 5, \"worked\": -1, \"changed\": 1}}").andExpect(status().isBadRequest());
    }

    @Test
    void theSuppliesOfTheLastTimeForAStyleComeBackWithOneButton() throws Exception {
        UUID style = UUID.randomUUID();
        jdbc.sql("insert into style (id, name, version) values (?, 'Invented folk', 0)")
                .param(style)
                .update();
        jdbc.sql("update piece set style_id = ?").param(style).update();
        send(tapped());
        read("/bench/now?piece=" + bench.box)
                .andExpect(content().string(containsString("As last time: Invented folk")));
        send(post("/bench/now")
                        .with(InventedShop.owner())
                        .param("act", "as-last-" + style)
                        .param("pieces", bench.box.toString()))
                .andExpect(content().string(containsString("value=\"3 dabs\"")));
    }

    @Test
    void aWaitIsRememberedAndTickedOff() throws Exception {
        mvc.perform(post("/bench/now")
                        .with(InventedShop.owner())
                        .param("act", "wait")
                        .param("waitMinutes", "12")
                        .param("waitWords", "Wipe back"))
                .andExpect(content().string(containsString("in 12 min")));
        UUID wait = jdbc.sql("select id from bench_wait").query(UUID.class).single();
        act("wait-done-" + wait).andExpect(content().string(not(containsString("in 12 min"))));
        mvc.perform(post("/bench/now").with(InventedShop.owner()).param("act", "wait"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"waitMinutes-error\"")));
    }

    @Test
    void whatIsOfferedHoldsTheMeasuresAndTheCautions() {
        NowChoices choices = program.getBean(NowChoices.class);
        List<SupplyCatalog.Known> known = program.getBean(SupplyCatalog.class).all();
        Map<UUID, String> last = program.getBean(NowPast.class).read().entries().lastUsed();
        assertThat(choices.supplies(known, last))
                .filteredOn(row -> row.value().equals(bench.paint))
                .singleElement()
                .satisfies(row -> assertThat(row.measures()).containsExactly("dab", "jar"));
        assertThat(choices.supplies(known, last))
                .filteredOn(row -> row.value().equals(bench.oil))
                .singleElement()
                .satisfies(row -> assertThat(row.cautions()).contains("RAG-1"));
        assertThat(choices.pieces("crate", List.of(), 5))
                .extracting(NowRows.PieceRow::title)
                .containsExactly("Long crate");
    }

    @Test
    void anEntryDeliveredTwiceIsOneEntryAndARefusedOneSaysWhy() throws Exception {
        for (int i = 0; i < 2; i++) {
            deliver(tapped().param("minutes", "20"))
                    .andExpect(status().is(i == 0 ? 201 : 200))
                    .andExpect(content().string(containsString("/bench/" + id + "?version=0")));
        }
        deliver(tapped().param("minutes", "25")).andExpect(status().is(422));
        assertThat(entries()).isEqualTo(1);
        assertThat(bench.paintLeft()).isEqualByComparingTo("194");

        UUID other = UUID.randomUUID();
        mvc.perform(post("/bench/now")
                        .with(InventedShop.owner())
                        .header("Idempotency-Key", "\"" + other + "\"")
                        .param("id", other.toString())
                        .param("taps[0].picked", "true")
                        .param("uses[0].supply", bench.paint.toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("uses[0].quantity")));
        assertThat(entries()).isEqualTo(1);
    }

    @Test
    void beforeTheSignInThePageHoldsNothingOfTheShopAndTheListsHoldTheRest() throws Exception {
        mvc.perform(get("/bench/now"))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Small box"))))
                .andExpect(content().string(not(containsString("Pond green"))));
        mvc.perform(get("/phone/token")).andExpect(content().string(containsString("\"person\":null")));
        read("/phone/token").andExpect(content().string(containsString("\"person\":\"" + InventedShop.OWNER)));
        read("/phone/lists")
                .andExpect(content()
                        .string(allOf(
                                containsString("bench-pieces"),
                                containsString("Small box"),
                                containsString("\"measures\":[\"dab\",\"jar\"]"))));
    }

    private ResultActions deliver(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.header("Idempotency-Key", "\"" + id + "\""));
    }

    /** Lets the clock have run for so long. */
    private void move(long seconds) {
        BenchClock.State state = clock.of(InventedShop.OWNER);
        BenchTimer timer = state.timer();
        Instant since = timer.since() == null ? null : timer.since().minusSeconds(seconds);
        clock.keep(
                InventedShop.OWNER,
                new BenchTimer(timer.started(), since, timer.worked(), timer.changed()),
                state.pieces());
    }

    private MockHttpServletRequestBuilder tapped() {
        return post("/bench/now")
                .with(InventedShop.owner())
                .param("id", id.toString())
                .param("pieces", bench.box.toString(), bench.crate.toString())
                .param("done", "Wiped down")
                .param("taps[0].picked", "true")
                .param("taps[0].measure", "dab")
                .param("taps[0].times", "3")
                .param("uses[0].supply", bench.paint.toString())
                .param("uses[0].share", "EQUAL")
                .param("uses[2].supply", bench.oil.toString());
    }

    private ResultActions act(String act) throws Exception {
        return mvc.perform(post("/bench/now").with(InventedShop.owner()).param("act", act));
    }

    private ResultActions meet(String json) throws Exception {
        return mvc.perform(post("/bench/clock")
                .with(InventedShop.owner())
                .contentType(MediaType.APPLICATION_JSON)
                .content(json));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request);
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
    }

    private long entries() {
        return jdbc.sql("select count(*) from bench_entry").query(Long.class).single();
    }
}
