package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.model;
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
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.ledger.Books;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/**
 * Bundles and what buyers send back, by the pages; figures worked by hand in docs/handbook/bundles.md. On the shelf: 4 jars of
 * 120 ml that cost 19.00 each and are asked 28.50, 10 brushes at 2.00 asked 5.00, 6 sheets at 1.50 asked 4.50. The starter set is
 * one of each, 38.00 singly, for 33.00.
 */
@ShopTest
class BundlesIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private SupplyLines lines;

    @Autowired
    private Supplies supplies;

    @Autowired
    private JdbcClient jdbc;

    private final UUID jar = UUID.randomUUID();
    private final UUID sheet = UUID.randomUUID();
    private final UUID set = UUID.randomUUID();
    private final UUID sale = UUID.randomUUID();
    private InventedGoods goods;

    @BeforeEach
    void stock() throws Exception {
        goods = new InventedGoods(program);
        UUID line = UUID.randomUUID();
        lines.save(new SupplyLine(line, "Shelf goods", "an invented maker"));
        List<Supply.Named> packs = List.of(new Supply.Named("jar", BigDecimal.valueOf(120)));
        supply(jar, new Supply.Facts(line, "Pond green", Dimension.VOLUME, Amount.of(2850), null, packs, List.of()));
        supply(sheet, facts(line, Amount.of(450)));
        books.record(bought());
        bundle("33.00").andExpect(redirectedUrl("/supplies/shelf"));
    }

    @Test
    void theShelfSaysHowManyBundlesItMakes() throws Exception {
        read("/supplies/shelf")
                .andExpect(content().string(containsString("Starter set")))
                .andExpect(content().string(containsString("1 jar Pond green, 1 Round brush, 1 Paper sheet")))
                .andExpect(content().string(containsString(">4</td>")))
                .andExpect(content().string(containsString("$38.00")))
                .andExpect(content().string(containsString("$22.50")))
                .andExpect(content().string(containsString("32%")));
        read("/supplies/bundles/" + set + "/edit")
                .andExpect(content().string(containsString("by what the parts are asked singly")))
                .andExpect(content().string(containsString("$24.75")));
    }

    @Test
    void aFormSentTwiceIsOneBundle() throws Exception {
        bundle("33.00").andExpect(redirectedUrl("/supplies/shelf"));
        assertThat(goods.count("bundle")).isEqualTo(1);
    }

    @Test
    void isSoldInOneLineThatBecomesThoseOfItsParts() throws Exception {
        read("/sales/new?bundle=" + set)
                .andExpect(content().string(containsString("value=\"33.00\"")))
                .andExpect(content().string(containsString("name=\"lines[0].bundle\" value=\"" + set)));
        sell("2", "33.00", "").andExpect(redirectedUrl("/sales/" + sale));
        assertThat(parts())
                .containsExactly(
                        tuple(jar, 2475L, 0L, 120), tuple(goods.brushes, 434L, 0L, 1), tuple(sheet, 391L, 0L, 1));
        assertThat(goods.balances())
                .containsEntry("SALES", -6600L)
                .containsEntry("COST_OF_RETAIL", 4500L)
                .containsEntry("SHELF", 10500L - 4500);
        read("/sales/" + sale)
                .andExpect(content().string(containsString("2 × Starter set, $66.00:")))
                .andExpect(content().string(containsString("Pond green $49.50, Round brush $8.68, Paper sheet $7.82")));
        read("/sales?q=starter").andExpect(content().string(containsString("Starter set")));
        read("/supplies/shelf").andExpect(content().string(containsString("240\u00a0ml")));
    }

    /** 3.00 off by 24.75, 4.34 and 3.91 of 33.00: 2.25, 0.3945 and 0.3555. */
    @Test
    void aDiscountOnTheBundleIsSharedToo() throws Exception {
        sell("2", "33.00", "3.00").andExpect(redirectedUrl("/sales/" + sale));
        assertThat(parts())
                .containsExactly(
                        tuple(jar, 2475L, 225L, 120), tuple(goods.brushes, 434L, 39L, 1), tuple(sheet, 391L, 36L, 1));
        assertThat(goods.balances()).containsEntry("SALES", -6300L);
    }

    /** Landed cost 19.00, 2.00 and 1.50: 27.8667, 2.9333 and 2.20. */
    @Test
    void isSharedByCostWhereAPartHasNoPrice() throws Exception {
        jdbc.sql("update supply set retail_price_minor = null where id = ?")
                .param(sheet)
                .update();
        sell("1", "33.00", "");
        assertThat(parts()).extracting(part -> part.toList().get(1)).containsExactly(2787L, 293L, 220L);
    }

    @Test
    void laterChangesLeaveWhatWasSoldAlone() throws Exception {
        sell("2", "33.00", "3.00");
        List<List<Object>> before = postings();
        perform(post("/supplies/bundles/" + set + "/edit")
                        .param("name", "Grand set")
                        .param("price", "60")
                        .param("version", version("bundle", set))
                        .param("parts[0].supply", jar.toString())
                        .param("parts[0].quantity", "2 jar"))
                .andExpect(redirectedUrl("/supplies/shelf"));
        jdbc.sql("update supply set retail_price_minor = 9900 where id = ?")
                .param(sheet)
                .update();
        perform(post("/supplies/bundles/" + set + "/remove")).andExpect(redirectedUrl("/supplies/shelf"));
        read("/sales/" + sale + "/edit").andExpect(content().string(containsString("value=\"Starter set\"")));
        assertThat(postings()).isEqualTo(before);

        change("33.00").andExpect(redirectedUrl("/sales/" + sale));
        assertThat(postings()).isEqualTo(before);
        sell(UUID.randomUUID(), "1", "33.00", "")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("sold no more")));
        read("/supplies/shelf").andExpect(content().string(not(containsString("Grand set"))));
    }

    @Test
    void aNewPriceOfASoldBundleIsSharedAsItWas() throws Exception {
        sell("2", "33.00", "");
        change("16.50").andExpect(redirectedUrl("/sales/" + sale));
        assertThat(parts()).extracting(part -> part.toList().get(1)).containsExactly(1238L, 217L, 195L);
    }

    /**
     * Two sets sold on 20 December. On 10 January one jar comes back to the shelf at 19.00, a brush comes back broken. At the
     * year's end the shelf holds 105.00 - 45.00 = 60.00, on the day of the return 79.00; on both days the year's list of
     * stock and the shelf say the same.
     */
    @Test
    void aPartComesBackAfterTheYearEndAndTheShelfStaysRightOnBothDays() throws Exception {
        sell("2", "33.00", "");
        perform(refund("2026-01-10", "23.63", "SHELF", "1 jar", "4.14", "LOST", "1"))
                .andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.balances())
                .containsEntry("SHELF", 7900L)
                .containsEntry("COST_OF_RETAIL", 2600L)
                .containsEntry("REFUNDS", 2777L)
                .doesNotContainKey("WRITE_OFFS");
        shelfIs("2025-12-31", 6000);
        shelfIs("2026-01-09", 6000);
        shelfIs("2026-01-10", 7900);
        read("/year/2025/stock").andExpect(model().attribute("shelf", Amount.of(6000)));
        read("/year/2026/stock").andExpect(model().attribute("shelf", Amount.of(7900)));
        read("/year/2025/stock").andExpect(content().string(containsString("Of it on the retail shelf: $60.00")));
        read("/sales/" + sale)
                .andExpect(content().string(containsString("Pond green, 120\u00a0ml back on the shelf")))
                .andExpect(content().string(containsString("Round brush, 1 sent back and not sellable")));
    }

    @Test
    void noMoreIsGivenBackOrComesBackThanWasSold() throws Exception {
        sell("2", "33.00", "");
        read("/sales/" + sale + "/refund")
                .andExpect(content().string(containsString("The buyer paid $49.50; at most $49.50")))
                .andExpect(content().string(containsString("Sold: 240\u00a0ml; at most 240\u00a0ml")))
                .andExpect(content().string(containsString("value=\"2 jar\"")));
        perform(refund("2026-01-10", "49.51", "SHELF", "3 jar", "", "", ""))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("At most 49.50 is left to give back")))
                .andExpect(content().string(containsString("No more than 240\u00a0ml is left of what was sold")))
                .andExpect(content().string(containsString("value=\"3 jar\"")))
                .andExpect(content().string(containsString("value=\"49.51\"")));
        perform(refund("2026-01-10", "", "LOST", "1 jar", "", "", "")).andExpect(redirectedUrl("/sales/" + sale));
        perform(refund("2026-01-11", "20.00", "SHELF", "2 jar", "", "", ""))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("No more than 120\u00a0ml is left of what was sold")));
        perform(refund("2026-01-11", "20.00", "", "", "", "", "")).andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.balances()).containsEntry("COST_OF_RETAIL", 4500L).containsEntry("REFUNDS", 2000L);
    }

    @Test
    void aBundleThatCannotBeReadKeepsWhatWasTyped() throws Exception {
        perform(post("/supplies/bundles/new")
                        .param("id", UUID.randomUUID().toString())
                        .param("name", "starter SET")
                        .param("price", "1,234")
                        .param("parts[0].supply", jar.toString())
                        .param("parts[0].quantity", "two jars")
                        .param("parts[1].supply", jar.toString())
                        .param("parts[1].quantity", "1 jar"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("There is a bundle of that name already")))
                .andExpect(content().string(containsString("id=\"price-error\"")))
                .andExpect(content().string(containsString("id=\"parts0.quantity-error\"")))
                .andExpect(content().string(containsString("value=\"two jars\"")));
        perform(post("/supplies/bundles/new").param("name", "Empty").param("price", "3"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Say what is in the bundle")));
        sell("1.5", "33.00", "")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Enter a whole number of bundles")))
                .andExpect(content().string(containsString("value=\"1.5\"")));
    }

    private void supply(UUID id, Supply.Facts facts) {
        supplies.save(new Supply(id, facts));
    }

    private static Supply.Facts facts(UUID line, @Nullable Amount price) {
        return new Supply.Facts(line, "Paper sheet", Dimension.COUNT, price, null, List.of(), List.of());
    }

    private Receipt bought() {
        List<ReceiptLine> bought = List.of(line(1, 4, 1900, jar, 120), line(2, 6, 150, sheet, 1));
        Amount total = Amount.of(8500);
        return new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        LocalDate.of(2025, 3, 1),
                        "",
                        null,
                        null,
                        total,
                        bought,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.PLACE, goods.bank, total))));
    }

    private static ReceiptLine line(int number, int quantity, long price, UUID supply, int content) {
        return new ReceiptLine(
                number,
                LineKind.SHELF,
                "",
                BigDecimal.valueOf(quantity),
                Amount.of(price),
                null,
                null,
                false,
                supply,
                BigDecimal.valueOf(content),
                null);
    }

    private ResultActions bundle(String price) throws Exception {
        return perform(post("/supplies/bundles/new")
                .param("id", set.toString())
                .param("name", "Starter set")
                .param("price", price)
                .param("parts[0].supply", jar.toString())
                .param("parts[0].quantity", "1 jar")
                .param("parts[1].supply", goods.brushes.toString())
                .param("parts[1].quantity", "1")
                .param("parts[2].supply", sheet.toString())
                .param("parts[2].quantity", "1"));
    }

    private ResultActions sell(String quantity, String price, String discount) throws Exception {
        return sell(sale, quantity, price, discount);
    }

    private ResultActions sell(UUID id, String quantity, String price, String discount) throws Exception {
        return perform(post("/sales/new")
                .param("id", id.toString())
                .param("date", "2025-12-20")
                .param("channel", goods.stall.toString())
                .param("lines[0].bundle", set.toString())
                .param("lines[0].title", "Starter set")
                .param("lines[0].quantity", quantity)
                .param("lines[0].price", price)
                .param("lines[0].discount", discount));
    }

    private ResultActions change(String price) throws Exception {
        return perform(post("/sales/" + sale + "/edit")
                .param("id", sale.toString())
                .param("version", version("document", sale))
                .param("date", "2025-12-20")
                .param("channel", goods.stall.toString())
                .param("buyer", "Kit, an invented buyer")
                .param("lines[0].bundle", set.toString())
                .param("lines[0].sold", "1")
                .param("lines[0].title", "Starter set")
                .param("lines[0].quantity", "2")
                .param("lines[0].price", price)
                .param("lines[0].discount", price.equals("33.00") ? "3.00" : ""));
    }

    private MockHttpServletRequestBuilder refund(
            String day, String forJar, String jarTo, String jars, String forBrush, String brushTo, String brushes) {
        return post("/sales/" + sale + "/refund")
                .param("id", UUID.randomUUID().toString())
                .param("date", day)
                .param("way", "PLACE")
                .param("place", goods.cash.toString())
                .param("lines[0].thing", jar.toString())
                .param("lines[0].amount", forJar)
                .param("lines[0].back", jarTo)
                .param("lines[0].quantity", jars)
                .param("lines[1].thing", goods.brushes.toString())
                .param("lines[1].amount", forBrush)
                .param("lines[1].back", brushTo)
                .param("lines[1].quantity", brushes);
    }

    private String version(String table, UUID id) {
        return jdbc.sql("select version from " + table + " where id = ?")
                .param(id)
                .query(String.class)
                .single();
    }

    private void shelfIs(String day, long minor) throws Exception {
        read("/supplies/shelf?day=" + day).andExpect(model().attribute("worth", minor));
    }

    private List<org.assertj.core.groups.Tuple> parts() {
        return jdbc.sql(
                        "select supply_id, price_minor, discount_minor, content from sale_line where sale_id = ? order by line")
                .param(sale)
                .query((row, number) -> tuple(
                        row.getObject("supply_id", UUID.class),
                        row.getLong("price_minor"),
                        row.getLong("discount_minor"),
                        row.getInt("content")))
                .list();
    }

    private List<List<Object>> postings() {
        return jdbc
                .sql("select account, supply_id, amount_minor, cast(quantity as numeric(30, 4)) as q from posting "
                        + "where document_id = ? order by line")
                .param(sale)
                .query()
                .listOfRows()
                .stream()
                .map(row -> (List<Object>) new java.util.ArrayList<>(row.values()))
                .toList();
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
    }

    private ResultActions perform(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
