package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.buying.LineKind;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Work is written down through the pages; figures worked by hand. */
@ShopTest
class BenchIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    private StockedBench bench;
    private final UUID id = UUID.randomUUID();

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
    }

    /**
     * Paint: 200 ml for 20.00, so 10.00 a hundred. Ten dabs of 2 ml = 20 ml = 2.00, equally: 1.00 each. Paper: 12 x 12 in
     * = 929.0304 cm² for 9.00; a cut of 12 x 8 in is two thirds = 6.00, by surface 100 to 300: 1.50 and 4.50.
     */
    @Test
    void severalSuppliesGoOnSeveralPieces() throws Exception {
        bench.paintFor("20.00", StockedBench.DAY);
        bench.receipt(LineKind.SUPPLY, bench.paper, new BigDecimal("929.0304"), "9.00", StockedBench.DAY);

        send(use(use(entry(), 0, bench.paint, "10 dabs", "EQUAL"), 1, bench.paper, "12 x 8 in", "AREA")
                        .param("ready", bench.box.toString()))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/bench/" + id));

        assertThat(bench.landed()).containsEntry("Small box", 250L).containsEntry("Long crate", 550L);
        assertThat(bench.paintLeft()).isEqualByComparingTo("180");
        read("/bench/" + id)
                .andExpect(content().string(containsString("$2.00")))
                .andExpect(content().string(containsString("$4.50")))
                .andExpect(content().string(containsString("Finished with this entry")))
                .andExpect(content().string(not(containsString("Not yet costed"))));
        read("/bench?q=crate").andExpect(content().string(containsString("/bench/" + id)));
        read("/bench?q=nothing-like-it").andExpect(content().string(not(containsString("/bench/" + id))));
        assertThat(jdbc.sql("select state from piece_state where piece_id = ?")
                        .param(bench.box)
                        .query(String.class)
                        .single())
                .isEqualTo("READY");
    }

    /** 20 ml of 200 ml for 20.00 = 2.00, shared 3 to 1 as typed: 1.50 and 0.50. */
    @Test
    void aUseIsSharedAsTypedOrGoesOnOnePieceOnly() throws Exception {
        bench.paintFor("20.00", StockedBench.DAY);
        send(use(entry(), 0, bench.paint, "20 ml", "TYPED")
                .param("uses[0].parts[0].piece", bench.box.toString())
                .param("uses[0].parts[0].weight", "3")
                .param("uses[0].parts[1].piece", bench.crate.toString())
                .param("uses[0].parts[1].weight", "1"));
        assertThat(bench.landed()).containsEntry("Small box", 150L).containsEntry("Long crate", 50L);

        change(use(fields(post("/bench/" + id + "/edit")), 0, bench.paint, "20 ml", "EQUAL")
                .param("uses[0].only", bench.crate.toString()));
        assertThat(bench.landed()).containsEntry("Small box", 0L).containsEntry("Long crate", 200L);

        change(use(fields(post("/bench/" + id + "/edit")), 0, bench.paint, "20 ml", "NONE"));
        assertThat(bench.landed()).containsEntry("Long crate", 0L);
        assertThat(bench.balance("WRITE_OFFS")).isEqualTo(200);
    }

    @Test
    void aUseBeforeItsReceiptWaitsForItsCost() throws Exception {
        send(use(entry(), 0, bench.paint, "50 ml", "EQUAL"));
        read("/bench/" + id).andExpect(content().string(containsString("Not yet costed")));
        read("/bench").andExpect(content().string(containsString("Not yet costed")));
        read("/supplies?show=WAITING").andExpect(content().string(containsString("Pond green")));

        bench.paintFor("20.00", StockedBench.DAY.plusDays(5));

        // 50 ml of 200 ml for 20.00 = 5.00 over two pieces.
        assertThat(bench.landed()).containsEntry("Small box", 250L).containsEntry("Long crate", 250L);
        read("/bench/" + id)
                .andExpect(content().string(not(containsString("Not yet costed"))))
                .andExpect(content().string(containsString("$5.00")));
    }

    @Test
    void aCupOfPaperIsRefusedBesideItsFieldAndNothingTypedIsLost() throws Exception {
        send(use(entry(), 0, bench.paper, "1 cup", "EQUAL").param("minutes", "45"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"uses0.quantity-error\"")))
                .andExpect(content().string(containsString("A cup measures volume; this supply is used by area")))
                .andExpect(content().string(containsString("value=\"1 cup\"")))
                .andExpect(content().string(containsString("value=\"45\"")));
        assertThat(entries()).isZero();
    }

    @Test
    void theSameFormSentTwiceIsOneEntry() throws Exception {
        bench.paintFor("20.00", StockedBench.DAY);
        send(use(entry(), 0, bench.paint, "20 ml", "EQUAL")).andExpect(status().isSeeOther());
        send(use(entry(), 0, bench.paint, "20 ml", "EQUAL"))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/bench/" + id));
        assertThat(entries()).isEqualTo(1);
        assertThat(bench.paintLeft()).isEqualByComparingTo("180");
    }

    @Test
    void changingAnEntryDerivesAnewAndAStaleFormIsTurnedAway() throws Exception {
        bench.paintFor("20.00", StockedBench.DAY);
        send(use(entry(), 0, bench.paint, "20 ml", "EQUAL"));
        read("/bench/" + id + "/edit").andExpect(content().string(containsString("value=\"20 ml\"")));

        change(use(fields(post("/bench/" + id + "/edit")), 0, bench.paint, "1/2 jar", "EQUAL"))
                .andExpect(status().isSeeOther());

        assertThat(bench.landed()).containsEntry("Small box", 500L).containsEntry("Long crate", 500L);
        mvc.perform(use(fields(post("/bench/" + id + "/edit")), 0, bench.paint, "1 ml", "EQUAL")
                        .param("version", "-1"))
                .andExpect(status().isConflict());
        assertThat(bench.paintLeft()).isEqualByComparingTo("100");

        mvc.perform(post("/bench/" + id + "/remove").with(InventedShop.owner())).andExpect(redirectedUrl("/bench"));
        assertThat(bench.landed()).containsEntry("Small box", 0L);
        assertThat(bench.paintLeft()).isEqualByComparingTo("200");
    }

    @Test
    void linesComeAndGoWithoutScript() throws Exception {
        send(use(entry(), 0, bench.paint, "7 ml", "EQUAL").param("act", "use"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("name=\"uses[1].supply\"")))
                .andExpect(content().string(containsString("value=\"7 ml\"")))
                .andExpect(content().string(containsString("name=\"uses[0].parts[1].weight\"")));
        send(use(use(entry(), 0, bench.paint, "7 ml", "EQUAL"), 1, bench.oil, "8 ml", "EQUAL")
                        .param("act", "drop-use-0"))
                .andExpect(content().string(not(containsString("value=\"7 ml\""))))
                .andExpect(content().string(containsString("value=\"8 ml\"")));
        send(entry().param("act", "mishap")).andExpect(content().string(containsString("name=\"mishaps[0].what\"")));
        send(entry().param("act", "pieces").param("pieceWords", "crate"))
                .andExpect(content().string(containsString("Small box")));
        assertThat(entries()).isZero();
    }

    @Test
    void theEnterKeyInTheSearchFindsAndDoesNotSave() throws Exception {
        send(entry().param("enter", "enter").param("pieceWords", "crate"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("name=\"foundBy\" value=\"crate\"")));
        assertThat(entries()).isZero();

        send(entry().param("pieceWords", "crate")).andExpect(status().isSeeOther());
        assertThat(entries()).isOne();
    }

    @Test
    void mishapsAreKeptAndCautionsShown() throws Exception {
        send(use(entry(), 0, bench.oil, "5 ml", "EQUAL")
                .param("mishaps[0].piece", bench.box.toString())
                .param("mishaps[0].supply", bench.oil.toString())
                .param("mishaps[0].surface", "old varnish")
                .param("mishaps[0].what", "Stayed sticky"));
        read("/bench/" + id)
                .andExpect(content().string(containsString("Stayed sticky")))
                .andExpect(content().string(containsString("Oily rags can set themselves on fire in hours")))
                .andExpect(content().string(containsString("Local codes")));
        read("/bench?mishap=yes").andExpect(content().string(containsString("/bench/" + id)));
        read("/bench?piece=" + bench.box).andExpect(content().string(containsString("/bench/" + id)));
        read("/bench?supply=" + bench.paint).andExpect(content().string(not(containsString("/bench/" + id))));
    }

    /** Two pieces of tin were worked with the paint and one of them failed: 1 of 2, and Wilson's 9% to 91%. */
    @Test
    void whatFailedOnASurfaceIsCountedAndToldWhenItIsPickedAgain() throws Exception {
        jdbc.sql("update piece set material = 'Tin'").update();
        bench.paintFor("20.00", StockedBench.DAY);
        send(use(entry(), 0, bench.paint, "10 ml", "EQUAL")
                        .param("mishaps[0].piece", bench.box.toString())
                        .param("mishaps[0].supply", bench.paint.toString())
                        .param("mishaps[0].preparation", "Wiped only")
                        .param("mishaps[0].what", "Peeled"))
                .andExpect(status().isSeeOther());

        assertThat(jdbc.sql("select surface, failed, tried, known from mishap_rate")
                        .query()
                        .singleRow())
                .containsEntry("surface", "tin")
                .containsEntry("failed", 1L)
                .containsEntry("tried", 2L)
                .containsEntry("known", true);
        read("/bench/mishaps")
                .andExpect(content().string(containsString("1 of 2")))
                .andExpect(content().string(containsString("9% to 91%")))
                .andExpect(content().string(containsString("Too few to tell")))
                .andExpect(content().string(containsString("Wiped only")));
        read("/bench/new?piece=" + bench.crate + "&supply=" + bench.paint)
                .andExpect(content().string(containsString("failed before: 1 of 2")));
        // Another supply of the same line is warned of too; no supply, or another surface, is not.
        read("/bench/new?piece=" + bench.crate + "&supply=" + bench.oil)
                .andExpect(content().string(containsString("failed before: 1 of 2")));
        read("/bench/new?piece=" + bench.crate).andExpect(content().string(not(containsString("failed before"))));
        read("/bench/now").andExpect(content().string(containsString("tin: failed 1 of 2")));
        read("/phone/lists").andExpect(content().string(containsString("bench-failed")));
    }

    @Test
    void aPieceWithoutSurfaceIsNotSharedBySurface() throws Exception {
        jdbc.sql("update piece set area_cm2 = null where id = ?")
                .param(bench.box)
                .update();
        send(use(entry(), 0, bench.paint, "7 ml", "AREA"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("is not known. Enter it on the page of the piece")));
    }

    @Test
    void aListOfPiecesWithGapsIsReadAsItStands() throws Exception {
        mvc.perform(post("/bench/new")
                        .with(InventedShop.owner())
                        .param("id", id.toString())
                        .param("act", "cut")
                        .param("pieces[3]", bench.crate.toString()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(bench.crate.toString())));
    }

    @Test
    void twoDaysAreNotSettledInSilence() throws Exception {
        MockHttpServletRequestBuilder request = post("/bench/new")
                .with(InventedShop.owner())
                .param("id", id.toString())
                .param("day", "TODAY")
                .param("date", "2025-03-02")
                .param("done", "Sanded");
        mvc.perform(request)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Two days are given")));
    }

    private MockHttpServletRequestBuilder entry() {
        return fields(post("/bench/new"));
    }

    private MockHttpServletRequestBuilder fields(MockHttpServletRequestBuilder request) {
        return request.with(InventedShop.owner())
                .param("id", id.toString())
                .param("day", "OTHER")
                .param("date", StockedBench.DAY.plusDays(1).toString())
                .param("pieces", bench.box.toString(), bench.crate.toString());
    }

    private static MockHttpServletRequestBuilder use(
            MockHttpServletRequestBuilder request, int line, UUID supply, String quantity, String share) {
        return request.param("uses[" + line + "].supply", supply.toString())
                .param("uses[" + line + "].quantity", quantity)
                .param("uses[" + line + "].how", "EYE")
                .param("uses[" + line + "].share", share);
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request);
    }

    private ResultActions change(MockHttpServletRequestBuilder request) throws Exception {
        String version = jdbc.sql("select version from document where id = ?")
                .param(id)
                .query(Long.class)
                .single()
                .toString();
        return mvc.perform(request.param("version", version));
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
    }

    private long entries() {
        return jdbc.sql("select count(*) from bench_entry").query(Long.class).single();
    }
}
