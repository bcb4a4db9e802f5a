package patinary.finishes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Finishes from their form to what they took; 200 ml of paint for 20.00, pieces of 100 and 300 cm². */
@ShopTest
class FinishIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    private StockedBench bench;
    private final UUID finish = UUID.randomUUID();

    @BeforeEach
    void keepAFinish() throws Exception {
        bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
        mvc.perform(form("/finishes/new", "One coat").param("id", finish.toString()))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/finishes/" + finish));
    }

    @Test
    void isKeptOnceChangedDuplicatedAndRemoved() throws Exception {
        mvc.perform(form("/finishes/new", "One coat").param("id", finish.toString()))
                .andExpect(status().isSeeOther());
        assertThat(count("finish")).isEqualTo(1);
        mvc.perform(form("/finishes/" + finish + "/edit", "Thin coat").param("version", "0"))
                .andExpect(status().isSeeOther());
        mvc.perform(form("/finishes/" + finish + "/edit", "Stale").param("version", "0"))
                .andExpect(status().isConflict());
        mvc.perform(signed(get("/finishes/new").param("like", finish.toString())))
                .andExpect(content().string(containsString("Thin coat, another way")))
                .andExpect(content().string(containsString("400 ml")));
        work(finish, true);
        mvc.perform(signed(post("/finishes/" + finish + "/remove"))).andExpect(status().isSeeOther());
        mvc.perform(signed(get("/finishes"))).andExpect(content().string(not(containsString("Thin coat"))));
        mvc.perform(signed(get("/finishes/" + finish))).andExpect(content().string(containsString("was removed")));
        assertThat(jdbc.sql("select count(*) from bench_entry where finish_id = ?")
                        .param(finish)
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void isRefusedWithReasonsBesideTheFields() throws Exception {
        mvc.perform(signed(post("/finishes/new"))
                        .param("id", UUID.randomUUID().toString())
                        .param("steps[0].what", "Wax")
                        .param("steps[0].waitFrom", "15")
                        .param("steps[0].waitTo", "10")
                        .param("steps[0].cautions", "NONE-1")
                        .param("needs[0].supply", bench.paint.toString())
                        .param("needs[0].quantity", "4 sq ft")
                        .param("needs[0].step", "7"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Give it a name")))
                .andExpect(content().string(containsString("not less than at least")))
                .andExpect(content().string(containsString("There is no caution NONE-1")))
                .andExpect(content().string(containsString("Choose a step that is filled in")))
                .andExpect(content().string(containsString("measures area")));
    }

    /** 400 ml for a square metre: the box of 100 cm² takes 4 ml of 200 ml for 20.00, that is 0.40. */
    @Test
    void estimatesByTheSurfaceElseByTheUsualOneElseSaysSo() throws Exception {
        mvc.perform(estimate(bench.box)).andExpect(content().string(containsString("$0.40")));
        UUID kind = UUID.randomUUID();
        jdbc.sql("insert into object_kind (id, name, area_cm2, version) values (?, 'Box', 250, 0)")
                .param(kind)
                .update();
        jdbc.sql("update piece set area_cm2 = null, kind_id = ? where id = ?")
                .params(kind, bench.box)
                .update();
        mvc.perform(estimate(bench.box))
                .andExpect(content().string(containsString("$1.00")))
                .andExpect(content().string(containsString("usual one of its kind")));
        jdbc.sql("update piece set kind_id = null where id = ?")
                .param(bench.box)
                .update();
        mvc.perform(estimate(bench.box))
                .andExpect(content().string(containsString("surface of this piece is not known")));
    }

    @Test
    void needsForPlannedPiecesAreKnownUntilTheyAreUsed() throws Exception {
        plan(bench.box);
        plan(bench.crate);
        assertThat(needs()).isEqualTo(Map.of(bench.box, new BigDecimal("4"), bench.crate, new BigDecimal("12")));
        work(finish, false);
        assertThat(needs()).containsOnlyKeys(bench.crate);
    }

    /** 6 ml went on the box: 0.60; the finish says 4 ml, that is 0.40. Thirty minutes, the finish says twenty. */
    @Test
    void comparesWhatItSaysWithWhatItTook() throws Exception {
        work(finish, false);
        mvc.perform(signed(get("/finishes/" + finish)))
                .andExpect(content().string(containsString("still on the bench")));
        work(finish, true);
        mvc.perform(signed(get("/finishes/" + finish)))
                .andExpect(content().string(containsString("too few to say")))
                .andExpect(content().string(containsString("1\u00a0h 0\u00a0min")))
                .andExpect(content().string(containsString("$1.20")))
                .andExpect(content().string(containsString("$0.40")))
                .andExpect(content().string(containsString("20\u00a0min")));
    }

    @Test
    void fillsInTheBenchFormAndStartsItsWaits() throws Exception {
        mvc.perform(benchForm("/bench/new").param("act", "finish"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"16 ml\"")))
                .andExpect(content().string(containsString("The finish says 40 minutes")))
                .andExpect(content().string(containsString("RAG-4")));
        mvc.perform(benchForm("/bench/now").param("act", "finish"))
                .andExpect(content().string(containsString("value=\"16 ml\"")));
        mvc.perform(benchForm("/bench/now").param("act", "step-wait-1")).andExpect(status().isOk());
        mvc.perform(benchForm("/bench/new").param("act", "step-wait-1")).andExpect(status().isOk());
        assertThat(jdbc.sql("select words from bench_wait").query(String.class).list())
                .containsExactly("Wipe back (10–15\u00a0min)", "Wipe back (10–15\u00a0min)");
        jdbc.sql("update piece set area_cm2 = null where id = ?")
                .param(bench.box)
                .update();
        mvc.perform(benchForm("/bench/new").param("act", "finish"))
                .andExpect(content().string(containsString("No surface is known of")));
    }

    private Map<UUID, BigDecimal> needs() {
        Map<UUID, BigDecimal> needs = new HashMap<>();
        jdbc.sql("select piece_id, quantity from piece_need where supply_id = ?")
                .param(bench.paint)
                .query(row -> {
                    needs.put(
                            row.getObject("piece_id", UUID.class),
                            row.getBigDecimal("quantity").stripTrailingZeros());
                });
        return needs;
    }

    private void plan(UUID piece) {
        jdbc.sql("update piece set planned_finish_id = ? where id = ?")
                .params(finish, piece)
                .update();
    }

    private void work(UUID followed, boolean ready) throws Exception {
        MockHttpServletRequestBuilder entry = signed(post("/bench/new"))
                .param("id", UUID.randomUUID().toString())
                .param("day", ready ? "TODAY" : "YESTERDAY")
                .param("finish", followed.toString())
                .param("pieces", bench.box.toString())
                .param("minutes", "30")
                .param("uses[0].supply", bench.paint.toString())
                .param("uses[0].quantity", "6 ml")
                .param("uses[0].how", "EYE")
                .param("uses[0].share", "AREA");
        if (ready) {
            entry.param("ready", bench.box.toString());
        }
        mvc.perform(entry).andExpect(status().isSeeOther());
    }

    private MockHttpServletRequestBuilder estimate(UUID piece) {
        return signed(get("/finishes/estimate").param("piece", piece.toString()).param("finish", finish.toString()));
    }

    private MockHttpServletRequestBuilder benchForm(String path) {
        return signed(post(path))
                .param("id", UUID.randomUUID().toString())
                .param("day", "TODAY")
                .param("finish", finish.toString())
                .param("pieces", bench.box.toString(), bench.crate.toString());
    }

    private MockHttpServletRequestBuilder form(String path, String name) {
        return signed(post(path))
                .param("name", name)
                .param("steps[0].what", "One coat of oil paint")
                .param("steps[0].minutes", "20")
                .param("steps[0].waitFrom", "10")
                .param("steps[0].waitTo", "15")
                .param("steps[0].waitWords", "Wipe back")
                .param("steps[0].cautions", "rag-4")
                .param("needs[0].step", "1")
                .param("needs[0].supply", bench.paint.toString())
                .param("needs[0].quantity", "400 ml")
                .param("needs[0].per", "SQUARE_METRE");
    }

    private static MockHttpServletRequestBuilder signed(MockHttpServletRequestBuilder request) {
        return request.with(InventedShop.owner());
    }

    private long count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Long.class).single();
    }
}
