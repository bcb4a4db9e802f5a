package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.Handling;
import patinary.bench.Pot;
import patinary.bench.PotPiece;
import patinary.bench.PotUse;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.bench.UsePot;
import patinary.ledger.Books;
import patinary.ledger.StockPlace;
import patinary.measure.Dimension;
import patinary.shop.CurrentShop;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.SupplyCount;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Counting quickly, what the counts tell, and the buying list, through the pages; figures by hand. */
@ShopTest
class CountingIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private CurrentShop shop;

    @Autowired
    private SupplyCatalog catalog;

    @Autowired
    private BuyingList rows;

    private StockedBench bench;
    private LocalDate start;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        start = shop.today().minusWeeks(10);
        bench.paintFor("20.00", start);
    }

    /** A jar of 200 ml: three quarters of the open one is 150; one more beside it makes 350. */
    @Test
    void tapsBecomeACount() throws Exception {
        count("quarters", "3").andExpect(status().isSeeOther());
        assertThat(bench.paintLeft()).isEqualByComparingTo("150");
        count("quarters", "3", "whole", "1").andExpect(status().isSeeOther());
        assertThat(bench.paintLeft()).isEqualByComparingTo("350");
        assertThat(jdbc.sql("select step_quantity from supply_count")
                        .query(BigDecimal.class)
                        .single())
                .isEqualByComparingTo("50");
        count("quantity", "60 ml").andExpect(status().isSeeOther());
        assertThat(bench.paintLeft()).isEqualByComparingTo("60");
        count("quarters", "0").andExpect(status().isSeeOther());
        assertThat(bench.paintLeft()).isEqualByComparingTo("0");
        assertThat(jdbc.sql("select count(*) from supply_count")
                        .query(Long.class)
                        .single())
                .as("of one day the last count stands")
                .isEqualTo(1);
    }

    /** 210 g with a jar of 85 g, 1.25 g a ml: 100 ml. Before the jar's weight is known it is asked for. */
    @Test
    void theScalesBecomeACount() throws Exception {
        count("gross", "210 g")
                .andExpect(status().is(422))
                .andExpect(
                        content().string(containsString("first enter on the supply what the empty container weighs")));
        jdbc.sql("update supply set empty_grams = 85, grams_per_ml = 1.25 where id = ?")
                .param(bench.paint)
                .update();
        count("gross", "80 g").andExpect(status().is(422));
        count("gross", "210 g", "quarters", "2")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("in one way only")));
        count("gross", "210 g").andExpect(status().isSeeOther());
        assertThat(bench.paintLeft()).isEqualByComparingTo("100");
    }

    /** 40 ml by eye = 4.00; a quarter left = 50 ml, so 110 ml = 11.00 are missing: as waste the box keeps its 4.00. */
    @Test
    void whatWasWastedIsBorneByNoPiece() throws Exception {
        use(40, "40 ml", start.plusDays(1));
        count("quarters", "1", "settle", "WASTE").andExpect(status().isSeeOther());
        assertThat(bench.landed()).containsEntry("Small box", 400L);
        assertThat(bench.balance("WRITE_OFFS")).isEqualTo(1100);
    }

    @Test
    void aPhoneDeliversACountOnce() throws Exception {
        UUID key = UUID.randomUUID();
        for (int status : new int[] {201, 200}) {
            mvc.perform(post("/count")
                            .with(InventedShop.owner())
                            .header("Idempotency-Key", "\"" + key + "\"")
                            .param("id", key.toString())
                            .param("supply", bench.paint.toString())
                            .param("date", start.plusDays(3).toString())
                            .param("quarters", "2")
                            .param("settle", "SHARE"))
                    .andExpect(status().is(status));
        }
        assertThat(jdbc.sql("select count(*) from supply_count where id = ?")
                        .param(key)
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
        assertThat(bench.paintLeft()).isEqualByComparingTo("100");
    }

    /**
     * Three times ten dabs of 2 ml, and each time 35 ml are gone: the dab is 3.49 ml by the ratio 1.7460, read 3.5. Corrected it
     * holds from today on; an entry of last week is still read with 2 ml; taken back it is 2 ml again.
     */
    @Test
    void aMeasureThatIsOffIsCorrectedFromTodayOnAndTakenBack() throws Exception {
        threeCounts();
        String page = "/supplies/" + bench.paint + "/eye";
        read(page).andExpect(content().string(containsString("Your dab is nearer 3.5\u00a0ml than 2\u00a0ml")));
        List<Long> before = jdbc.sql("select amount_minor from posting order by document_id, line")
                .query(Long.class)
                .list();

        act(page, "name", "dab").andExpect(redirectedUrl(page));
        SupplyCatalog.Known paint = catalog.find(bench.paint).orElseThrow();
        assertThat(paint.facts().measures().get(0).quantity()).isEqualByComparingTo("3.5");
        assertThat(paint.measuresOn(shop.today()).get(0).quantity().value()).isEqualByComparingTo("3.5");
        assertThat(paint.measuresOn(shop.today().minusDays(7)).get(0).quantity().value())
                .isEqualByComparingTo("2");
        assertThat(jdbc.sql("select amount_minor from posting order by document_id, line")
                        .query(Long.class)
                        .list())
                .as("old uses stay")
                .isEqualTo(before);
        read(page).andExpect(content().string(not(containsString("is nearer"))));

        act(page + "/undo", "name", "dab", "from", shop.today().toString()).andExpect(redirectedUrl(page));
        assertThat(catalog.find(bench.paint)
                        .orElseThrow()
                        .facts()
                        .measures()
                        .get(0)
                        .quantity())
                .isEqualByComparingTo("2");
        act(page + "/undo", "name", "dab", "from", shop.today().toString()).andExpect(redirectedUrl(page));
        act(page, "name", "no such").andExpect(redirectedUrl(page));
    }

    /** 105 ml in ten weeks and 95 ml left is enough for nine; with a mark of 100 ml a jar is on the list. */
    @Test
    void theBuyingListLeadsToAFilledReceipt() throws Exception {
        threeCounts();
        read("/buying-list")
                .andExpect(content().string(containsString("Pond paints: Pond green")))
                .andExpect(content().string(containsString("Nothing to buy")));
        jdbc.sql("update supply set low_quantity = 100 where id = ?")
                .param(bench.paint)
                .update();
        jdbc.sql("update books set changes = changes + 1").update();
        String wish = "1*" + bench.paint + "/jar";
        read("/buying-list")
                .andExpect(content().string(containsString("1 × jar")))
                .andExpect(content().string(containsString(wish)));
        mvc.perform(get("/receipts/new").param("wanted", wish).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"" + bench.paint + "/jar\" selected")));
        assertThat(jdbc.sql("select count(*) from receipt").query(Long.class).single())
                .as("nothing is stored before she keeps it")
                .isEqualTo(1);
    }

    @Test
    void signedOutTheCountingPageHoldsNothingOfTheShop() throws Exception {
        mvc.perform(get("/count"))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Pond green"))));
    }

    private void threeCounts() {
        for (int i = 1; i <= 3; i++) {
            use(20, "10 dabs", start.plusWeeks(2L * i));
            books.record(new SupplyCount(
                    UUID.randomUUID(),
                    start.plusWeeks(2L * i),
                    "",
                    bench.paint,
                    StockPlace.BENCH,
                    BigDecimal.valueOf(200 - 35L * i)));
        }
    }

    /** 10 ml a week in pots are used like any: what is kept of them, and used later, is not the paint's use again. */
    @Test
    void whatWentIntoPotsIsUsed() {
        UUID kept = UUID.randomUUID();
        program.getBean(Supplies.class)
                .save(new Supply(
                        kept,
                        new Supply.Facts(
                                bench.line, "Kept green", Dimension.VOLUME, null, null, List.of(), List.of())));
        for (int week = 1; week <= 4; week++) {
            pot(week == 1 ? kept : null, start.plusWeeks(week));
        }
        use(kept, 3, "3 ml", start.plusWeeks(5));
        BuyRow paint = rows.rows(shop.today()).stream()
                .filter(row -> row.supply().id().equals(bench.paint))
                .findFirst()
                .orElseThrow();
        assertThat(paint.rate()).isNotNull();
        assertThat(paint.rate().uses()).isEqualTo(4);
        assertThat(paint.rate().perWeek()).isCloseTo(40.0 * 7 / 71, within(1e-9));
        assertThat(jdbc.sql("select sum(quantity) from bench_taken where supply_id = ?")
                        .param(bench.paint)
                        .query(BigDecimal.class)
                        .single())
                .isEqualByComparingTo("40");
    }

    /** 10 ml of paint; where it is kept, 4 ml of them. */
    private void pot(@Nullable UUID kept, LocalDate day) {
        BigDecimal rest = BigDecimal.valueOf(kept == null ? 0 : 4);
        Pot pot = new Pot(1, "", null, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.TEN, rest, kept, null);
        List<UsePot> aside = kept == null ? List.of() : List.of(new UsePot(1, kept, rest));
        Handling handling = new Handling(
                List.of(),
                List.of(pot),
                List.of(new PotPiece(1, bench.box, BigDecimal.ONE)),
                List.of(new PotUse(1, 1)),
                aside);
        books.record(new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day,
                        "",
                        10,
                        "",
                        List.of(new BenchPiece(bench.box, false)),
                        List.of(new SupplyUse(1, bench.paint, "10 ml", BigDecimal.TEN, false)),
                        List.of(new UsePiece(1, bench.box, BigDecimal.TEN.subtract(rest))),
                        List.of(),
                        handling)));
    }

    private void use(int millilitres, String typed, LocalDate day) {
        use(bench.paint, millilitres, typed, day);
    }

    private void use(UUID supply, int millilitres, String typed, LocalDate day) {
        books.record(new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day,
                        "",
                        10,
                        "",
                        List.of(new BenchPiece(bench.box, false)),
                        List.of(new SupplyUse(1, supply, typed, BigDecimal.valueOf(millilitres), true)),
                        List.of(new UsePiece(1, bench.box, BigDecimal.ONE)),
                        List.of())));
    }

    private ResultActions count(String... answers) throws Exception {
        var request = post("/count")
                .with(InventedShop.owner())
                .param("id", UUID.randomUUID().toString())
                .param("supply", bench.paint.toString());
        for (int i = 0; i < answers.length; i += 2) {
            request.param(answers[i], answers[i + 1]);
        }
        return mvc.perform(request);
    }

    private ResultActions act(String path, String... parameters) throws Exception {
        var request = post(path).with(InventedShop.owner());
        for (int i = 0; i < parameters.length; i += 2) {
            request.param(parameters[i], parameters[i + 1]);
        }
        return mvc.perform(request).andExpect(status().isSeeOther());
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
    }
}
