package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.supplies.Supplies;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Offering, selling and what follows, by the pages; all figures worked by hand from {@link InventedGoods}. */
@ShopTest
class SellingIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Supplies supplies;

    @Autowired
    private JdbcClient jdbc;

    private static final List<String> FOLDS = List.of("of-the-shelf", "taxed", "less", "paid");

    private InventedGoods goods;

    @BeforeEach
    void stock() {
        goods = new InventedGoods(program);
    }

    /**
     * A set of tray and jug, weights 3 and 1, at 48.00 with 8.00 off the line, and 3 brushes at 5.00; 5.00 off the whole;
     * shipping 6.00; tax 4.00 passed on. Nets 40.00 and 15.00 = 55.00; 5.00 off: 3.64 and 1.36 (3.6364 and 1.3636);
     * prices 36.36 and 13.64 = 50.00. Fee 10 % of 56.00 + 0.30 = 5.90. Cost 12.00 + 3 × 2.00 = 18.00.
     */
    @Test
    void sellsASetAndRetailWithDiscountsOnAFeeChannel() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(setAndBrushes(sale)).andExpect(redirectedUrl("/sales/" + sale));

        assertThat(goods.balances())
                .containsEntry("SALES", -5000L)
                .containsEntry("SHIPPING_CHARGED", -600L)
                .containsEntry("FEES", 590L)
                .containsEntry("COST_OF_PIECES", 1200L)
                .containsEntry("COST_OF_RETAIL", 600L)
                .doesNotContainKeys("SALES_TAX_DUE", "PIECES");
        assertThat(goods.money(goods.balance)).isEqualTo(5600 - 590);
        assertThat(jdbc.sql("select price_minor from sale_part where sale_id = ? and piece_id = ?")
                        .params(sale, goods.tray)
                        .query(Long.class)
                        .single())
                .isEqualTo(2727);
        // Profit 50.00 + 6.00 - 5.90 - 18.00 = 32.10; of net sales 57.3 %, of cost 178.3 %.
        mvc.perform(get("/sales/" + sale).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("$32.10")))
                .andExpect(content().string(containsString("57.3%")))
                .andExpect(content().string(containsString("178.3%")));
        mvc.perform(get("/sales?q=MK-7&month=2025-03&only=unposted").with(InventedShop.owner()))
                .andExpect(content().string(containsString("Tray and jug, Round brush")))
                .andExpect(content().string(containsString("$32.10")));
    }

    @Test
    void aFormSentTwiceIsOneSale() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(setAndBrushes(sale)).andExpect(redirectedUrl("/sales/" + sale));
        sell(setAndBrushes(sale)).andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.count("sale")).isEqualTo(1);
    }

    /** Fee by the rule of the day: 12 % of 40.00 + 0.30 from June. */
    @Test
    void worksOutTheFeeByTheRuleOfTheDayAndLetsItBeOvertyped() throws Exception {
        sell(tray("2025-06-01", UUID.randomUUID()).param("fee", "9.99").param("act", "sums"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"5.10\"")));
        assertThat(goods.count("sale")).isZero();
        sell(tray("2025-06-01", UUID.randomUUID()).param("fee", "9.99"));
        assertThat(goods.balances()).containsEntry("FEES", 999L);
    }

    /** A plain sale is short on a phone; what is filled in, or wrong, stands open. */
    @Test
    void foldsAwayWhatAPlainSaleSeldomNeeds() throws Exception {
        String plain = form(get("/sales/new").with(InventedShop.owner()));
        assertThat(FOLDS)
                .allSatisfy(fold -> assertThat(isOpen(plain, fold)).as(fold).isFalse());

        String filled = form(tray("2025-06-01", UUID.randomUUID())
                .param("act", "sums")
                .param("taxBy", "SHOP")
                .param("tip", "1.00")
                .param("owed", "5.00")
                .with(InventedShop.owner()));
        assertThat(FOLDS.subList(1, FOLDS.size()))
                .allSatisfy(fold -> assertThat(isOpen(filled, fold)).as(fold).isTrue());

        String wrong = form(tray("2025-06-01", UUID.randomUUID())
                .param("act", "sums")
                .param("deposit", "5.00")
                .with(InventedShop.owner()));
        assertThat(isOpen(wrong, "paid")).isTrue();
        assertThat(isOpen(wrong, "less")).isFalse();
    }

    /** Chosen in a list and not added by its button: the sale is not stored without it, nor with a price she has not seen. */
    @Test
    void leavesNothingOutThatWasChosen() throws Exception {
        UUID sale = UUID.randomUUID();
        String again = form(tray("2025-06-01", sale)
                .param("addSupply", goods.brushes.toString())
                .with(InventedShop.owner()));
        assertThat(goods.count("sale")).isZero();
        assertThat(again).contains("This was chosen and is now added").contains("name=\"lines[1].supply\"");

        String sums = form(tray("2025-06-01", sale)
                .param("act", "sums")
                .param("addSupply", goods.brushes.toString())
                .with(InventedShop.owner()));
        assertThat(sums).contains("name=\"lines[1].supply\"").doesNotContain("This was chosen");

        sell(post("/offers/new")
                        .param("id", sale.toString())
                        .param("date", "2025-03-01")
                        .param("codes", "P0001")
                        .param("add", "P0002")
                        .param("price", "48.00")
                        .param("channels", goods.market.toString()))
                .andExpect(status().is3xxRedirection());
        assertThat(jdbc.sql("select count(*) from offer_piece where offer_id = ?")
                        .param(sale)
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
    }

    private String form(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request).andReturn().getResponse().getContentAsString();
    }

    private static boolean isOpen(String page, String fold) {
        Matcher details =
                Pattern.compile("<details[^>]*id=\"" + fold + "\"[^>]*>").matcher(page);
        assertThat(details.find()).as(fold).isTrue();
        return details.group().contains("open=");
    }

    @Test
    void owesTheTaxThatTheChannelDoesNotPassOn() throws Exception {
        sell(tray("2025-03-10", UUID.randomUUID()).param("tax", "3.20").param("taxBy", "SHOP"))
                .andExpect(status().is3xxRedirection());
        assertThat(goods.balances()).containsEntry("SALES_TAX_DUE", -320L).containsEntry("SALES", -4000L);
        assertThat(goods.money(goods.balance)).isEqualTo(4000 + 320 - 430);
    }

    @Test
    void refusesToSellAPieceTwiceAndKeepsWhatWasTyped() throws Exception {
        sell(tray("2025-03-10", UUID.randomUUID()));
        sell(tray("2025-03-11", UUID.randomUUID()).param("buyer", "A second buyer"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("has already left")))
                .andExpect(content().string(containsString("A second buyer")));
        assertThat(goods.count("sale")).isEqualTo(1);
    }

    @Test
    void takesAPieceBackAndSellsItAgainLater() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale));
        perform(refund(sale, "2025-03-15", "40.00", true)
                        .param("feeBack", "4.30")
                        .param("way", "PLACE")
                        .param("place", goods.balance.toString()))
                .andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.state(goods.tray)).isEqualTo("FOUND");
        assertThat(goods.balances())
                .containsEntry("PIECES", 1200L)
                .containsEntry("REFUNDS", 4000L)
                .doesNotContainKeys("COST_OF_PIECES", "FEES");
        assertThat(goods.money(goods.balance)).isZero();

        sell(tray("2025-03-16", UUID.randomUUID())).andExpect(status().is3xxRedirection());
        assertThat(goods.state(goods.tray)).isEqualTo("SOLD");
        assertThat(goods.balances()).containsEntry("COST_OF_PIECES", 800L).containsEntry("SALES", -8000L);
        // The first sale can no longer be undone: a refund rests on it.
        perform(post("/sales/" + sale + "/remove")).andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.count("sale")).isEqualTo(2);
    }

    @Test
    void refusesToGiveBackMoreThanWasPaid() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale));
        perform(refund(sale, "2025-03-15", "40.01", false)
                        .param("way", "PLACE")
                        .param("place", goods.balance.toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("At most 40.00 is left to give back")));
    }

    @Test
    void isOwedThenPaid() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale).param("owed", "25.00"));
        assertThat(goods.balances()).containsEntry("RECEIVABLE", 2500L);
        mvc.perform(get("/sales?only=owed").with(InventedShop.owner()))
                .andExpect(content().string(containsString("Owed: $25.00")));

        perform(payment("/sales/" + sale + "/payment", "2025-03-20", "25.01")).andExpect(status().is(422));
        perform(payment("/sales/" + sale + "/payment", "2025-03-20", "25.00"))
                .andExpect(redirectedUrl("/sales/" + sale));
        assertThat(goods.balances()).doesNotContainKey("RECEIVABLE");
        assertThat(goods.money(goods.cash)).isEqualTo(2500);
    }

    @Test
    void usesADepositThatWasPaidAhead() throws Exception {
        perform(payment("/payments/new", "2025-03-01", "10.00").param("buyer", "Kit, an invented buyer"))
                .andExpect(redirectedUrl("/payments"));
        assertThat(goods.balances()).containsEntry("CUSTOMER_DEPOSITS", -1000L);
        sell(tray("2025-03-10", UUID.randomUUID()).param("deposit", "10.01"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("more than is held")));
        sell(tray("2025-03-10", UUID.randomUUID()).param("deposit", "10.00")).andExpect(status().is3xxRedirection());
        assertThat(goods.balances()).doesNotContainKey("CUSTOMER_DEPOSITS");
        assertThat(goods.money(goods.balance)).isEqualTo(3000 - 430);
    }

    /** The number of the sale in the address must not stand in for that of what follows it. */
    @Test
    void whatFollowsASaleGetsANumberOfItsOwnWhereItsFormLostIt() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale).param("owed", "25.00"));
        String there = "/sales/" + sale;
        perform(lost(there + "/postage").param("carriage", "5.40").param("direction", "OUT"))
                .andExpect(redirectedUrl(there));
        perform(lost(there + "/payment").param("amount", "25.00")).andExpect(redirectedUrl(there));
        perform(lost(there + "/refund")
                        .param("lines[0].thing", goods.tray.toString())
                        .param("lines[0].amount", "10.00")
                        .param("way", "PLACE"))
                .andExpect(redirectedUrl(there));
        for (String table : List.of("postage", "payment", "refund")) {
            assertThat(jdbc.sql("select id from " + table).query(UUID.class).list())
                    .as(table)
                    .singleElement()
                    .isNotEqualTo(sale);
        }
        // A second payment is one more and is refused for what is owed; it is not taken for the sale.
        perform(lost(there + "/payment").param("amount", "1.00"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"amount-error\"")));
    }

    /** Nor does a header fill in what a form leaves out. */
    @Test
    void aHeaderIsNoAnswer() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale).header("buyer", "Kit, an invented buyer"));
        assertThat(jdbc.sql("select buyer from sale").query(String.class).single())
                .isEmpty();
    }

    /** A form without the number that it was drawn with. */
    private MockHttpServletRequestBuilder lost(String path) {
        return post(path).param("date", "2025-03-12").param("place", goods.cash.toString());
    }

    @Test
    void addsPostageAndPaysOut() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale));
        perform(post("/sales/" + sale + "/postage")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-11")
                        .param("place", goods.cash.toString())
                        .param("carriage", "5.40")
                        .param("packing", "0.60")
                        .param("direction", "OUT"))
                .andExpect(redirectedUrl("/sales/" + sale));
        perform(post("/payouts/new")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-20")
                        .param("from", goods.balance.toString())
                        .param("to", goods.bank.toString())
                        .param("amount", "35.00")
                        .param("fee", "0.70"))
                .andExpect(redirectedUrlPattern("/payouts/*"));
        assertThat(goods.money(goods.balance)).isZero();
        assertThat(goods.money(goods.bank)).isEqualTo(3500 - 3200);
        assertThat(goods.balances()).containsEntry("POSTAGE", 600L).containsEntry("FEES", 430L + 70);
        // 40.00 - 4.30 - 6.00 - 8.00 = 21.70: the fee of a payout belongs to no single sale.
        mvc.perform(get("/sales/" + sale).with(InventedShop.owner()))
                .andExpect(content().string(containsString("$21.70")));
    }

    @Test
    void undoesASaleSoThatTheOfferIsLiveAgain() throws Exception {
        UUID offer = UUID.randomUUID();
        perform(offer(offer, "P0001")).andExpect(redirectedUrl("/offers/" + offer));
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale));
        assertThat(offerState(offer)).isEqualTo("SOLD");
        perform(post("/sales/" + sale + "/posted").param("day", "2025-03-12"))
                .andExpect(redirectedUrl("/sales/" + sale));
        perform(post("/sales/" + sale + "/remove")).andExpect(redirectedUrl("/sales"));
        assertThat(offerState(offer)).isEqualTo("LIVE");
        assertThat(goods.state(goods.tray)).isEqualTo("OFFERED");
        assertThat(goods.balances()).doesNotContainKeys("SALES", "FEES", "COST_OF_PIECES");
    }

    @Test
    void changesASaleAndRefusesAStaleChange() throws Exception {
        UUID sale = UUID.randomUUID();
        sell(tray("2025-03-10", sale));
        mvc.perform(get("/sales/" + sale + "/edit").with(InventedShop.owner()))
                .andExpect(content().string(containsString("P0001")))
                .andExpect(content().string(containsString("4.30")));
        MockHttpServletRequestBuilder change = fill(post("/sales/" + sale + "/edit"), "2025-03-10", sale)
                .param("version", "0")
                .param("buyer", "Kit");
        perform(change).andExpect(redirectedUrl("/sales/" + sale));
        perform(fill(post("/sales/" + sale + "/edit"), "2025-03-10", sale).param("version", "0"))
                .andExpect(status().isConflict());
    }

    private MockHttpServletRequestBuilder setAndBrushes(UUID sale) {
        return post("/sales/new")
                .param("id", sale.toString())
                .param("date", "2025-03-10")
                .param("channel", goods.market.toString())
                .param("order", "MK-7")
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

    private MockHttpServletRequestBuilder tray(String day, UUID sale) {
        return fill(post("/sales/new"), day, sale);
    }

    private MockHttpServletRequestBuilder fill(MockHttpServletRequestBuilder request, String day, UUID sale) {
        return request.param("id", sale.toString())
                .param("date", day)
                .param("channel", goods.market.toString())
                .param("lines[0].codes", "P0001")
                .param("lines[0].price", "40.00");
    }

    private MockHttpServletRequestBuilder refund(UUID sale, String day, String amount, boolean back) {
        return post("/sales/" + sale + "/refund")
                .param("id", UUID.randomUUID().toString())
                .param("date", day)
                .param("lines[0].thing", goods.tray.toString())
                .param("lines[0].amount", amount)
                .param("lines[0].comesBack", String.valueOf(back));
    }

    private MockHttpServletRequestBuilder payment(String path, String day, String amount) {
        return post(path)
                .param("id", UUID.randomUUID().toString())
                .param("date", day)
                .param("place", goods.cash.toString())
                .param("amount", amount);
    }

    private MockHttpServletRequestBuilder offer(UUID id, String codes) {
        return post("/offers/new")
                .param("id", id.toString())
                .param("date", "2025-03-01")
                .param("codes", codes)
                .param("price", "45")
                .param("channels", goods.market.toString());
    }

    private String offerState(UUID offer) {
        return jdbc.sql("select state from offer_state where offer_id = ?")
                .param(offer)
                .query(String.class)
                .single();
    }

    private ResultActions sell(MockHttpServletRequestBuilder request) throws Exception {
        return perform(request);
    }

    private ResultActions perform(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
