package patinary.selling;

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
import patinary.ledger.Books;
import patinary.ledger.Check;
import patinary.ledger.StockPlace;
import patinary.supplies.Supplies;
import patinary.supplies.SupplyCount;
import patinary.supplies.SupplyLines;
import patinary.taxyear.YearSeal;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What sales are packed in, by the pages; the figures are those of the handbook, worked by hand. */
@ShopTest
class PackagingIT {

    private static final String DAY = "2025-03-10";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private Check check;

    @Autowired
    private JdbcClient jdbc;

    private InventedGoods goods;
    private InventedPacking packing;

    @BeforeEach
    void stock() {
        goods = new InventedGoods(program);
        packing = new InventedPacking(
                books, program.getBean(SupplyLines.class), program.getBean(Supplies.class), goods.bank);
    }

    /**
     * One box of 1.20, three sheets of 0.09, a metre of tape of 0.08: 1.55, shared by the prices 27.27, 9.09 and 13.64. Of
     * 155: 84.54, 28.18 and 42.28; 0.85, 0.28 and 0.42 in whatever order. Profit 32.10 − 1.55 = 30.55.
     */
    @Test
    void packsASaleAndSharesWhatItCostOverItsThings() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        UUID sale = UUID.randomUUID();
        perform(small(set(sale))).andExpect(redirectedUrl("/sales/" + sale));

        assertThat(goods.balances()).containsEntry("EXPENSE", 155L).doesNotContainKey("POSTAGE");
        assertThat(jdbc.sql("select distinct category from posting where account = 'EXPENSE'")
                        .query(String.class)
                        .list())
                .containsExactly("packaging");
        assertThat(share(sale, "piece_id", goods.tray)).isEqualTo(85);
        assertThat(share(sale, "piece_id", goods.jug)).isEqualTo(28);
        assertThat(share(sale, "supply_id", goods.brushes)).isEqualTo(42);
        assertThat(jdbc.sql("select count(*) from sale_part where sale_id = ?")
                        .param(sale)
                        .query(Long.class)
                        .single())
                .as("a box is no thing sold")
                .isEqualTo(3);
        assertThat(jdbc.sql("select packaging_minor from piece_figures where piece_id = ?")
                        .param(goods.tray)
                        .query(Long.class)
                        .single())
                .isEqualTo(85);
        page("/sales/" + sale, "What it was packed in", "3 sheets", "$1.55", "$30.55");
        page("/sales?month=2025-03", "$30.55");
        page("/pieces/" + goods.tray, "Packaging", "0.85");
        assertThat(left(packing.box)).isEqualByComparingTo("9");
        assertThat(check.run()).isEmpty();
    }

    @Test
    void keepsWhatCannotBeReadAndBlocksNothingThatIsEmpty() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        perform(set(UUID.randomUUID())
                        .param("wraps[0].supply", packing.tissue.toString())
                        .param("wraps[0].quantity", "3 armfuls")
                        .param("wraps[1].quantity", "1 box"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("3 armfuls")))
                .andExpect(content().string(containsString("Choose the supply, or empty the row")));
        assertThat(goods.count("sale")).isZero();
        perform(set(UUID.randomUUID()).param("wraps[0].supply", "").param("wraps[0].quantity", ""))
                .andExpect(status().is3xxRedirection());
        assertThat(goods.balances()).doesNotContainKey("EXPENSE");
    }

    /** Half of a roll of 50 m, which cost 4.00, is 2.00; the rest of the form stays as it was. */
    @Test
    void isAddedLaterAndChangedByThePageOfItsOwn() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        UUID sale = UUID.randomUUID();
        perform(set(sale));
        perform(post("/sales/" + sale + "/packing")
                        .param("version", "0")
                        .param("wraps[0].supply", packing.tape.toString())
                        .param("wraps[0].quantity", "1/2 roll"))
                .andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.balances()).containsEntry("EXPENSE", 200L).containsEntry("SALES", -5000L);
        perform(post("/sales/" + sale + "/packing").param("version", "0")).andExpect(status().isConflict());
        page("/sales/" + sale + "/edit", "1/2 roll");
        page("/sales/" + sale + "/packing", "1/2 roll");
        perform(post("/sales/" + sale + "/packing").param("version", "1")).andExpect(status().is3xxRedirection());
        assertThat(goods.balances()).doesNotContainKey("EXPENSE");
    }

    @Test
    void herOwnWaysAreTakenWithOneTap() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        UUID way = UUID.randomUUID();
        perform(small(post("/parcels/new").param("id", way.toString()).param("name", "Small parcel")))
                .andExpect(redirectedUrl("/parcels"));
        page("/parcels", "Small parcel", "1 box, 3 sheets, 1 m");
        perform(small(post("/parcels/new").param("name", "small parcel"))).andExpect(status().is(422));
        perform(post("/parcels/new").param("name", "Nothing")).andExpect(status().is(422));

        perform(set(UUID.randomUUID()).param("act", "pack-" + way))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"3 sheets\"")));
        assertThat(goods.count("sale")).isZero();

        UUID sale = UUID.randomUUID();
        perform(set(sale));
        page("/sales/" + sale, "Small parcel: 1 box, 3 sheets, 1 m");
        perform(post("/sales/" + sale + "/packing")
                        .param("version", "0")
                        .param("atOnce", "true")
                        .param("act", "pack-" + way))
                .andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.balances()).containsEntry("EXPENSE", 155L);

        // The sale packed last on this channel is offered first, and a way that is removed takes no packing back.
        perform(post("/parcels/" + way + "/remove")).andExpect(redirectedUrl("/parcels"));
        assertThat(goods.balances()).containsEntry("EXPENSE", 155L);
        perform(set(UUID.randomUUID()).param("act", WrapDesk.LAST))
                .andExpect(content().string(containsString("As last time here: 1 box, 3 sheets, 1 m")))
                .andExpect(content().string(containsString("value=\"3 sheets\"")));
    }

    @Test
    void aChangedWayIsTakenFromThenOn() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        UUID way = UUID.randomUUID();
        perform(small(post("/parcels/new").param("id", way.toString()).param("name", "Small parcel")));
        String version =
                jdbc.sql("select version from parcel").query(String.class).single();
        perform(post("/parcels/" + way)
                        .param("version", version)
                        .param("name", "Tiny parcel")
                        .param("wraps[0].supply", packing.tissue.toString())
                        .param("wraps[0].quantity", "1 sheet"))
                .andExpect(redirectedUrl("/parcels"));
        page("/parcels/" + way, "Tiny parcel", "1 sheet");
        perform(small(post("/parcels/" + way).param("version", version).param("name", "Late")))
                .andExpect(status().isConflict());
        perform(set(UUID.randomUUID()).param("act", "pack-" + way))
                .andExpect(content().string(containsString("value=\"1 sheet\"")))
                .andExpect(content().string(not(containsString("value=\"3 sheets\""))));
    }

    /** The box of a parcel that came back is gone; a sale that never was took none. */
    @Test
    void doesNotComeBackWithARefundButWithASaleThatIsUndone() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        UUID sale = UUID.randomUUID();
        perform(small(set(sale)));
        perform(post("/sales/" + sale + "/refund")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-15")
                        .param("lines[0].thing", goods.tray.toString())
                        .param("lines[0].amount", "27.27")
                        .param("lines[0].comesBack", "true")
                        .param("way", "PLACE")
                        .param("place", goods.balance.toString()))
                .andExpect(redirectedUrl("/sales/" + sale));
        assertThat(left(packing.box)).isEqualByComparingTo("9");
        assertThat(goods.balances()).containsEntry("EXPENSE", 155L);
        UUID refund = jdbc.sql("select id from refund").query(UUID.class).single();
        perform(post("/sales/" + sale + "/followers/" + refund + "/remove"));
        perform(post("/sales/" + sale + "/remove")).andExpect(redirectedUrl("/sales"));
        assertThat(left(packing.box)).isEqualByComparingTo("10");
        assertThat(goods.balances()).doesNotContainKey("EXPENSE");
        assertThat(goods.count("sale_wrap")).isZero();
        assertThat(check.run()).isEmpty();
    }

    /** Packed before the boxes were bought, then a count finds 45 m of tape where the books have 49: 0.32 more. */
    @Test
    void costThatComesLateReachesTheSale() throws Exception {
        UUID sale = UUID.randomUUID();
        perform(small(set(sale)));
        page("/sales/" + sale, "Not yet costed");
        packing.buy(LocalDate.of(2025, 3, 20));
        assertThat(goods.balances()).containsEntry("EXPENSE", 155L);
        assertThat(share(sale, "piece_id", goods.tray)).isEqualTo(85);
        books.record(new SupplyCount(
                UUID.randomUUID(),
                LocalDate.of(2025, 4, 1),
                "",
                packing.tape,
                StockPlace.BENCH,
                BigDecimal.valueOf(4500)));
        // 1.87 by 27.27 of 50.00 is 1.02 (1.0199), in whatever order the three are taken.
        assertThat(goods.balances()).containsEntry("EXPENSE", 187L).doesNotContainKey("WRITE_OFFS");
        assertThat(share(sale, "piece_id", goods.tray)).isEqualTo(102);
        mvc.perform(get("/sales/" + sale).with(InventedShop.owner()))
                .andExpect(content().string(not(containsString("Not yet costed"))));
        assertThat(check.run()).isEmpty();
    }

    /** Bought 25.00 of packing, 1.55 of it spent: it is an expense, and the cost of goods by both ways leaves it out. */
    @Test
    void isDeductedOnceAtTheEndOfTheYear() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        perform(small(set(UUID.randomUUID())));
        page("/year/2025", "taken off materials: $1.55");
        mvc.perform(get("/year/2025").with(InventedShop.owner()))
                .andExpect(content().string(not(containsString("These two must be the same"))));
        // Materials 25.00 − 1.55; with 12.00 + 20.00 of goods and 14.00 + 23.45 left: 18.00, all of it what was sold.
        assertThat(year("purchase = 'MATERIALS'") - year("packed")).isEqualTo(2500 - 155);
        assertThat(year("part = 'COST'")).isEqualTo(1800);
        assertThat(year("part = 'EXPENSE' and account = 'EXPENSE'")).isEqualTo(155);
        page("/year/2025/line/cogs_materials", "$1.55");
        page("/year/2025/expenses.csv", "packaging", "1.20");
        page("/year/2025/purchases-and-cost.csv", "PACKED");
    }

    @Test
    void isRefusedWhereTheYearIsSealed() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        UUID sale = UUID.randomUUID();
        perform(set(sale));
        books.record(new YearSeal(UUID.randomUUID(), LocalDate.of(2025, 12, 31), "", 2025, "", 1));
        perform(small(post("/sales/" + sale + "/packing").param("version", "0")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("3 sheets")));
        assertThat(goods.balances()).doesNotContainKey("EXPENSE");
    }

    @Test
    void countsAsUsed() throws Exception {
        packing.buy(InventedGoods.BOUGHT);
        perform(small(set(UUID.randomUUID())));
        assertThat(jdbc.sql("select typed from bench_taken where supply_id = ? and estimated")
                        .param(packing.tape)
                        .query(String.class)
                        .list())
                .containsExactly("1 m");
        perform(post("/supplies/" + packing.box + "/remove"));
        assertThat(jdbc.sql("select count(*) from supply where id = ?")
                        .param(packing.box)
                        .query(Long.class)
                        .single())
                .as("a supply that packed a sale stays")
                .isEqualTo(1);
    }

    private MockHttpServletRequestBuilder set(UUID sale) {
        return post("/sales/new")
                .param("id", sale.toString())
                .param("date", DAY)
                .param("channel", goods.market.toString())
                .param("lines[0].title", "Tray and jug")
                .param("lines[0].codes", "P0001 p0002")
                .param("lines[0].weights", "3 1")
                .param("lines[0].price", "48")
                .param("lines[0].discount", "8")
                .param("lines[1].supply", goods.brushes.toString())
                .param("lines[1].quantity", "3")
                .param("lines[1].content", "1")
                .param("lines[1].price", "5")
                .param("discount", "5")
                .param("shipping", "6")
                .param("tax", "4");
    }

    private MockHttpServletRequestBuilder small(MockHttpServletRequestBuilder request) {
        return request.param("wraps[0].supply", packing.box.toString())
                .param("wraps[0].quantity", "1 box")
                .param("wraps[1].supply", packing.tissue.toString())
                .param("wraps[1].quantity", "3 sheets")
                .param("wraps[2].supply", packing.tape.toString())
                .param("wraps[2].quantity", "1 m")
                .param("wraps[2].byEye", "true");
    }

    private long share(UUID sale, String what, UUID thing) {
        return jdbc.sql("select packaging_minor from sale_part where sale_id = ? and " + what + " = ?")
                .params(sale, thing)
                .query(Long.class)
                .single();
    }

    private long year(String which) {
        return jdbc.sql("select cast(coalesce(sum(amount_minor), 0) as bigint) from year_row where " + which)
                .query(Long.class)
                .single();
    }

    private BigDecimal left(UUID supply) {
        return jdbc.sql("select quantity from stock_left where supply_id = ? and place = 'BENCH'")
                .param(supply)
                .query(BigDecimal.class)
                .single();
    }

    private void page(String path, String... said) throws Exception {
        ResultActions page = mvc.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
        for (String words : List.of(said)) {
            page.andExpect(content().string(containsString(words)));
        }
    }

    private ResultActions perform(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
