package patinary.supplies;

import static org.assertj.core.api.Assertions.assertThat;
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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.buying.LineKind;
import patinary.ledger.Books;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Supplies, counts and takings through the pages; figures worked by hand. */
@ShopTest
class SuppliesIT {

    private static final LocalDate DAY = StockedBench.DAY;

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private JdbcClient jdbc;

    private StockedBench bench;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
    }

    /**
     * 200 ml for 20.00. By eye 40 ml on the box = 4.00 and 20 ml on the crate = 2.00. Books: 140 ml. Counted: half a jar =
     * 100 ml, so 40 ml more = 4.00, in proportion 2 to 1: 2.67 and 1.33 (largest remainder).
     */
    @Test
    void aCountSettlesWhatWasJudgedByEye() throws Exception {
        bench.paintFor("20.00", DAY);
        use(bench.box, 40, true, DAY.plusDays(1));
        use(bench.crate, 20, true, DAY.plusDays(2));
        read("/supplies/" + bench.paint + "/count").andExpect(content().string(containsString("140")));

        UUID count = UUID.randomUUID();
        count(count, "1/2 jar", DAY.plusDays(3)).andExpect(redirectedUrl("/supplies/counts/" + count));

        assertThat(bench.landed()).containsEntry("Small box", 667L).containsEntry("Long crate", 333L);
        assertThat(bench.balance("BENCH")).isEqualTo(1000);
        read("/supplies/counts/" + count)
                .andExpect(content().string(containsString("more was used than the books knew")))
                .andExpect(content().string(containsString("$2.67")))
                .andExpect(content().string(containsString("$1.33")));

        mvc.perform(post("/supplies/counts/" + count + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/supplies/" + bench.paint));
        assertThat(bench.landed()).containsEntry("Small box", 400L).containsEntry("Long crate", 200L);
    }

    /** A measured use is left alone: 50 ml too little goes to write-offs, 200 ml for 20.00 = 5.00. */
    @Test
    void aCountLeavesWhatWasMeasuredAlone() throws Exception {
        bench.paintFor("20.00", DAY);
        use(bench.box, 50, false, DAY.plusDays(1));
        count(UUID.randomUUID(), "100 ml", DAY.plusDays(2));
        assertThat(bench.landed()).containsEntry("Small box", 500L);
        assertThat(bench.balance("WRITE_OFFS")).isEqualTo(500);
    }

    @Test
    void anEmptyJarIsCountedAsNothingAndACountSentTwiceIsOne() throws Exception {
        bench.paintFor("20.00", DAY);
        UUID count = UUID.randomUUID();
        count(count, "0", DAY.plusDays(1)).andExpect(status().isSeeOther());
        count(count, "0", DAY.plusDays(1)).andExpect(status().isSeeOther());
        assertThat(bench.paintLeft()).isEqualByComparingTo("0");
        assertThat(jdbc.sql("select count(*) from supply_count")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void aCountOfPaintInInchesIsRefusedBesideItsField() throws Exception {
        count(UUID.randomUUID(), "12 x 8 in", DAY)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"quantity-error\"")))
                .andExpect(content().string(containsString("measures area; this supply is used by volume")));
    }

    /** 200 ml on the shelf for 20.00; a quarter jar = 50 ml = 5.00 goes to the bench at cost. */
    /** What the address is about has another name than the form's own id, and never stands in for it. */
    @Test
    void aFormThatLostItsIdDoesNotTakeThatOfTheSupply() throws Exception {
        bench.receipt(LineKind.SHELF, bench.paint, BigDecimal.valueOf(200), "20.00", DAY);
        for (String what : List.of("/take", "/count")) {
            mvc.perform(post("/supplies/" + bench.paint + what)
                            .with(InventedShop.owner())
                            .param("place", "SHELF")
                            .param("date", DAY.plusDays(1).toString())
                            .param("quantity", "1/4 jar"))
                    .andExpect(status().isSeeOther());
        }
        assertThat(jdbc.sql("select id from document where kind in ('TAKING', 'COUNT')")
                        .query(UUID.class)
                        .list())
                .hasSize(2)
                .doesNotContain(bench.paint);
    }

    @Test
    void takingMovesFromTheShelfToTheBenchAtCost() throws Exception {
        bench.receipt(LineKind.SHELF, bench.paint, BigDecimal.valueOf(200), "20.00", DAY);
        UUID taking = UUID.randomUUID();
        mvc.perform(post("/supplies/" + bench.paint + "/take")
                        .with(InventedShop.owner())
                        .param("id", taking.toString())
                        .param("date", DAY.plusDays(1).toString())
                        .param("quantity", "1/4 jar")
                        .param("ownUseTax", "true"))
                .andExpect(redirectedUrl("/supplies/takings/" + taking));
        assertThat(bench.balance("SHELF")).isEqualTo(1500);
        assertThat(bench.balance("BENCH")).isEqualTo(500);
        read("/supplies/takings/" + taking)
                .andExpect(content().string(containsString("$5.00")))
                .andExpect(content().string(containsString("for your state&#39;s rules")));
    }

    @Test
    void aFormWithTheNumberOfAnotherIsRefusedInWords() throws Exception {
        UUID receipt = bench.receipt(LineKind.SHELF, bench.paint, BigDecimal.valueOf(200), "20.00", DAY);
        mvc.perform(post("/supplies/" + bench.paint + "/take")
                        .with(InventedShop.owner())
                        .param("id", receipt.toString())
                        .param("date", DAY.plusDays(1).toString())
                        .param("quantity", "1/4 jar"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Something else was recorded with this form already")));
        assertThat(bench.balance("BENCH")).isZero();
    }

    /** 200 ml, one jar, on the shelf for 20.00, asked 32.00: margin 37.5, so 38%. A quarter taken: 15.00 is left. */
    @Test
    void theShelfIsShownAtCostOnAnyDay() throws Exception {
        bench.receipt(LineKind.SHELF, bench.paint, BigDecimal.valueOf(200), "20.00", DAY);
        jdbc.sql("update supply set retail_price_minor = 3200 where id = ?")
                .param(bench.paint)
                .update();
        mvc.perform(post("/supplies/" + bench.paint + "/take")
                .with(InventedShop.owner())
                .param("id", UUID.randomUUID().toString())
                .param("date", DAY.plusDays(1).toString())
                .param("quantity", "1/4 jar"));

        RetailList shelf = program.getBean(RetailList.class);
        RetailList.Row before = shelf.at(DAY).get(0);
        assertThat(before.costMinor()).isEqualTo(2000);
        assertThat(before.packCostMinor()).isEqualTo(2000L);
        assertThat(before.marginPercent()).isEqualTo(38L);
        assertThat(before.isLow()).isFalse();
        RetailList.Row after = shelf.at(DAY.plusDays(1)).get(0);
        assertThat(after.costMinor()).isEqualTo(1500);
        assertThat(after.soldQuantity()).isEqualByComparingTo("0");
        assertThat(after.isLow()).isTrue();
        assertThat(shelf.at(DAY.minusDays(1)).get(0).costMinor()).isZero();
        read("/supplies/shelf?day=" + DAY).andExpect(content().string(containsString("38%")));
        read("/supplies/shelf").andExpect(content().string(containsString("Less than a pack")));
    }

    @Test
    void thePageOfASupplyTellsItsLotsAndMovementsWithWhatWasLeft() throws Exception {
        bench.paintFor("20.00", DAY);
        use(bench.box, 50, true, DAY.plusDays(1));
        use(bench.box, 30, true, DAY.plusDays(2));
        SupplyStory story = program.getBean(SupplyStory.class);
        assertThat(story.movements(bench.paint, patinary.web.Window.of(null)).rows())
                .extracting(
                        move -> move.runningQuantity().stripTrailingZeros().toPlainString(),
                        SupplyStory.Movement::runningMinor)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("120", 1200L),
                        org.assertj.core.groups.Tuple.tuple("150", 1500L),
                        org.assertj.core.groups.Tuple.tuple("200", 2000L));
        read("/supplies/" + bench.paint)
                .andExpect(content().string(containsString("0.1 USD per ml")))
                .andExpect(content().string(containsString("jar = 200")))
                .andExpect(content().string(containsString("0.6 × jar")));
        read("/supplies").andExpect(content().string(containsString("0.6 × jar")));
    }

    @Test
    void aSupplyIsAddedWithItsLinePacksAndMeasures() throws Exception {
        mvc.perform(post("/supplies/new")
                        .with(InventedShop.owner())
                        .param("name", "Moss wash")
                        .param("newLine", "Hedge paints")
                        .param("newMaker", "an invented maker")
                        .param("dimension", "VOLUME")
                        .param("measures[0].name", "cupful")
                        .param("measures[0].quantity", "4 fl oz")
                        .param("packs[0].name", "jar")
                        .param("packs[0].quantity", "2 cupfuls")
                        .param("low", "1/2 jar")
                        .param("retailPrice", "12.50"))
                .andExpect(status().isSeeOther());
        SupplyCatalog.Known supply = program.getBean(SupplyCatalog.class).all().stream()
                .filter(known -> known.facts().name().equals("Moss wash"))
                .findFirst()
                .orElseThrow();
        // 8 US fluid ounces of 29.5735295625 ml each: NIST Handbook 44, Appendix C.
        assertThat(supply.facts().packs().get(0).quantity()).isEqualByComparingTo("236.5882365");
        assertThat(supply.facts().low()).isEqualByComparingTo("118.29411825");
        assertThat(supply.line().name()).isEqualTo("Hedge paints");
        read("/supplies/" + supply.id()).andExpect(content().string(containsString("jar = 8")));
        read("/supplies/" + supply.id() + "/edit").andExpect(content().string(containsString("value=\"8 fl oz\"")));
        read("/supplies?show=LOW")
                .andExpect(content().string(containsString("Moss wash")))
                .andExpect(content().string(not(containsString("Pond green"))));
        read("/supplies?q=hedge").andExpect(content().string(containsString("Moss wash")));
        read("/supplies?line=" + bench.line).andExpect(content().string(not(containsString("Moss wash"))));
    }

    @Test
    void howAUsedSupplyIsMeasuredCannotChangeAndItStays() throws Exception {
        bench.paintFor("20.00", DAY);
        edit("MASS", bench.paint)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("how it is measured cannot change")));
        mvc.perform(post("/supplies/" + bench.paint + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/supplies/" + bench.paint));
        assertThat(program.getBean(Supplies.class).findById(bench.paint)).isPresent();

        edit("MASS", bench.oil).andExpect(status().isSeeOther());
        mvc.perform(post("/supplies/" + bench.oil + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/supplies"));
        assertThat(program.getBean(Supplies.class).findById(bench.oil)).isEmpty();
    }

    @Test
    void namesOfPacksThatAreUnitsOrTwiceAreRefused() throws Exception {
        mvc.perform(post("/supplies/new")
                        .with(InventedShop.owner())
                        .param("name", "Odd")
                        .param("line", bench.line.toString())
                        .param("dimension", "VOLUME")
                        .param("packs[0].name", "cup")
                        .param("packs[0].quantity", "4 ml")
                        .param("measures[0].name", "dab")
                        .param("measures[0].quantity", "4 ml")
                        .param("measures[1].name", "Dab")
                        .param("measures[1].quantity", "5 ml"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"packs0.name-error\"")))
                .andExpect(content().string(containsString("id=\"measures1.name-error\"")));
    }

    @Test
    void linesAreAddedOnceAndGoOnlyWhenEmpty() throws Exception {
        mvc.perform(post("/supplies/lines")
                        .with(InventedShop.owner())
                        .param("name", "Waxes")
                        .param("maker", ""))
                .andExpect(redirectedUrl("/supplies/lines"));
        mvc.perform(post("/supplies/lines")
                        .with(InventedShop.owner())
                        .param("name", "waxes")
                        .param("maker", ""))
                .andExpect(status().is(422));
        mvc.perform(post("/supplies/lines/" + bench.line + "/remove").with(InventedShop.owner()));
        read("/supplies/lines")
                .andExpect(content().string(containsString("Waxes")))
                .andExpect(content().string(containsString("Pond paints")));
    }

    private ResultActions edit(String dimension, UUID supply) throws Exception {
        SupplyCatalog.Known known =
                program.getBean(SupplyCatalog.class).find(supply).orElseThrow();
        return mvc.perform(post("/supplies/" + supply + "/edit")
                .with(InventedShop.owner())
                .param("version", Long.toString(known.version()))
                .param("name", known.facts().name())
                .param("line", bench.line.toString())
                .param("dimension", dimension));
    }

    private ResultActions count(UUID id, String quantity, LocalDate day) throws Exception {
        MockHttpServletRequestBuilder request = post("/supplies/" + bench.paint + "/count")
                .with(InventedShop.owner())
                .param("id", id.toString())
                .param("place", "BENCH")
                .param("date", day.toString())
                .param("quantity", quantity);
        return mvc.perform(request);
    }

    private void use(UUID piece, int millilitres, boolean byEye, LocalDate day) {
        books.record(new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day,
                        "",
                        0,
                        "painted",
                        List.of(new BenchPiece(piece, false)),
                        List.of(new SupplyUse(
                                1, bench.paint, millilitres + " ml", BigDecimal.valueOf(millilitres), byEye)),
                        List.of(new UsePiece(1, piece, BigDecimal.ONE)),
                        List.of())));
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
    }
}
