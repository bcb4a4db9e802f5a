package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What the page for buying sends becomes an ordinary receipt, by the rules of one. Sums worked by hand. */
@ShopTest
class BuyIT {

    private static final String ID = "00000000-0000-4000-8000-00000000b001";
    private static final String PIECE = "00000000-0000-4000-8000-00000000b002";
    private static final String KIND = "00000000-0000-4000-8000-00000000b003";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private patinary.shop.CurrentShop shop;

    @BeforeEach
    void fill() {
        Shelf.fill(jdbc);
        jdbc.sql("insert into object_kind (id, name, version) values (?, 'Side table', 0)")
                .param(UUID.fromString(KIND))
                .update();
    }

    @Test
    void becomesAReceiptWithThePiecesAndIdsOfThePhone() throws Exception {
        // Half of 4.99 is 2.495, rounded half up 2.50 off: 2.49. Three of 4.00. Home 3.00, donation 0.51. In all 18.00.
        mvc.perform(mixed().param("tillTotal", "18.00")).andExpect(redirectedUrl("/receipts/" + ID));
        mvc.perform(mixed().param("tillTotal", "18.00")).andExpect(status().isSeeOther());
        assertThat(number("select count(*) from receipt")).isEqualTo(1);
        assertThat(number("select count(*) from piece")).isEqualTo(4);
        assertThat(text("select title from piece where id = '" + PIECE + "'")).isEqualTo("Side table");
        assertThat(account("PIECES")).isEqualTo(1449);
        assertThat(account("OWNER_OUT")).isEqualTo(351);
        assertThat(account("MONEY")).isEqualTo(-1800);
    }

    @Test
    void refusesAPieceThatIsThereAlready() throws Exception {
        mvc.perform(mixed().param("tillTotal", "18.00")).andExpect(status().isSeeOther());
        mvc.perform(mixed("00000000-0000-4000-8000-00000000b009").param("tillTotal", "18.00"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("recorded already")));
        assertThat(number("select count(*) from piece")).isEqualTo(4);
    }

    @Test
    void addsTheTaxOfTheSourceUnlessToldOtherwise() throws Exception {
        jdbc.sql("update source set tax_percent = 8.25").update();
        // Tax on what is no donation: 8.25 % of 17.49 is 1.442925, so 1.44.
        mvc.perform(mixed().param("tillTotal", "18.00")).andExpect(status().is(422));
        mvc.perform(mixed().param("tillTotal", "19.44")).andExpect(status().isSeeOther());
        assertThat(account("MONEY")).isEqualTo(-1944);
        mvc.perform(single(UUID.randomUUID(), "10.00").param("tax", "0").param("tillTotal", "10.00"))
                .andExpect(status().isSeeOther());
    }

    /** With a resale certificate only what goes home is taxed: 8.25 % of 3.00 is 0.2475, so 0.25. */
    @Test
    void leavesGoodsForSaleUntaxedWhereThereIsAResaleCertificate() throws Exception {
        jdbc.sql("update source set tax_percent = 8.25, resale_certificate = 'invented 1'")
                .update();
        mvc.perform(mixed().param("tillTotal", "18.25")).andExpect(status().isSeeOther());
        assertThat(account("PIECES")).isEqualTo(1449);
        assertThat(account("OWNER_OUT")).isEqualTo(376);
        mvc.perform(single(UUID.randomUUID(), "10.00").param("tillTotal", "10.00"))
                .andExpect(status().isSeeOther());
        // All was taxed after all, and she says so.
        mvc.perform(single(UUID.randomUUID(), "10.00").param("tax", "8.25").param("tillTotal", "10.83"))
                .andExpect(status().isSeeOther());
        // What the till asked beyond the list was tax on what is for home, as the rest is not taxed.
        mvc.perform(mixed("00000000-0000-4000-8000-00000000b009", "00000000-0000-4000-8000-00000000b00a")
                        .param("tillTotal", "18.30")
                        .param("settle", "TAX"))
                .andExpect(status().isSeeOther());
        assertThat(account("PIECES")).isEqualTo(1449 + 1000 + 1083 + 1449);
    }

    @Test
    void findsWhatIsNotKnownYetUntilItIs() throws Exception {
        settle("12.00", "OPEN", "2.00", 1000);
        settle("8.00", "OPEN", "-2.00", 800);
        mvc.perform(single(UUID.randomUUID(), "10.00").param("tillTotal", "10.00"))
                .andExpect(status().isSeeOther());
        String all = page("/receipts");
        assertThat(all.split("Open question</span>", -1)).hasSize(3);
        assertThat(all).contains("3 receipts");
        assertThat(page("/receipts?kind=OPEN")).contains("2 receipts");
        assertThat(page("/receipts?kind=OPEN&q=nowhere")).contains("No receipt here");
        String open = jdbc.sql("select receipt_id from receipt_charge")
                .query(UUID.class)
                .single()
                .toString();
        assertThat(page("/receipts/" + open)).contains("Once you know, change the receipt");
        jdbc.sql("update receipt_charge set title = 'Member card'").update();
        assertThat(page("/receipts/" + open)).doesNotContain("Open question");
        assertThat(page("/receipts?kind=OPEN").split("Open question</span>", -1))
                .hasSize(2);
    }

    /** The shop's day rules the books; a phone further east is a day ahead of it for some hours. */
    @Test
    void takesAPhonesTodayForTheShopsWhereItIsADayAhead() throws Exception {
        java.time.LocalDate today = shop.today();
        deliver("TODAY", today.plusDays(1)).andExpect(status().isCreated());
        deliver("TODAY", today.minusDays(3)).andExpect(status().isCreated());
        deliver("TODAY", today.plusDays(2)).andExpect(status().is(422));
        deliver("OTHER", today.plusDays(1)).andExpect(status().is(422));
        assertThat(jdbc.sql("select doc_date from document order by doc_date")
                        .query(java.time.LocalDate.class)
                        .list())
                .containsExactly(today.minusDays(3), today);
    }

    private org.springframework.test.web.servlet.ResultActions deliver(String day, java.time.LocalDate date)
            throws Exception {
        UUID id = UUID.randomUUID();
        return mvc.perform(single(id, "10.00")
                .header("Idempotency-Key", "\"" + id + "\"")
                .accept("application/json")
                .param("day", day)
                .param("date", date.toString())
                .param("tillTotal", "10.00"));
    }

    private String page(String address) throws Exception {
        return mvc.perform(get(address).with(InventedShop.owner()))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void settlesADifferenceAsSheSaysAndAbsorbsNone() throws Exception {
        settle("10.60", "TAX", "", 1060);
        assertThat(account("PIECES")).isEqualTo(1060);
        settle("9.98", "ROUNDING", "-0.02", -2);
        assertThat(account("ROUNDING")).isEqualTo(-2);
        settle("9.00", "DISCOUNT", "-1.00", 900);
        settle("7.00", "TOTAL", "-3.00", 1000);
        settle("12.00", "OPEN", "2.00", 1000);
        assertThat(account("OWNER_OUT")).isEqualTo(200);
        settle("8.00", "OPEN", "-2.00", 800);
        assertThat(number("select count(*) from receipt_line where title like 'Not known yet%'"))
                .isEqualTo(1);
        assertThat(number("select count(*) from receipt_charge where title like 'Not known yet%'"))
                .isEqualTo(1);
    }

    /** With a tax on everything before, what is not known yet is not taxed: it would change the total again. */
    @Test
    void leavesAnOpenQuestionUntaxed() throws Exception {
        mvc.perform(single(UUID.randomUUID(), "10.00")
                        .param("tax", "10")
                        .param("tillTotal", "13.00")
                        .param("settle", "OPEN")
                        .param("settled", "2.00"))
                .andExpect(status().isSeeOther());
        assertThat(account("PIECES")).isEqualTo(1100);
        assertThat(account("OWNER_OUT")).isEqualTo(200);
    }

    @Test
    void asksAgainWhereTheAnswerWasForAnotherDifference() throws Exception {
        mvc.perform(single(UUID.randomUUID(), "10.00")
                        .param("tillTotal", "12.00")
                        .param("settle", "OPEN")
                        .param("settled", "1.00"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("That is $2.00 more")));
        mvc.perform(single(UUID.randomUUID(), "10.00")
                        .param("tillTotal", "9.00")
                        .param("settle", "TAX"))
                .andExpect(status().is(422));
        assertThat(number("select count(*) from receipt")).isZero();
    }

    @Test
    void keepsWhatWasTypedAndSaysWhatIsWrongBesideIt() throws Exception {
        mvc.perform(buy(UUID.fromString(ID))
                        .param("things[0].price", "1,234")
                        .param("things[0].otherPercent", "120")
                        .param("things[0].count", "500")
                        .param("things[1].price", "")
                        .param("things[1].kind", KIND)
                        .param("things[2].price", "5")
                        .param("tillTotal", "x"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("value=\"1,234\"")))
                .andExpect(content().string(containsString("id=\"things0.price-error\"")))
                .andExpect(content().string(containsString("id=\"things0.otherPercent-error\"")))
                .andExpect(content().string(containsString("id=\"things0.count-error\"")))
                .andExpect(content().string(containsString("id=\"tillTotal-error\"")))
                .andExpect(content().string(not(containsString("things[2]"))));
        mvc.perform(buy(UUID.fromString(ID)).param("tillTotal", "1"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"things0.price-error\"")));
    }

    @Test
    void redrawsForItsSmallButtonsAndSavesNothing() throws Exception {
        MockHttpServletRequestBuilder like = buy(UUID.fromString(ID))
                .param("things[0].price", "4.99")
                .param("things[0].kind", KIND)
                .param("things[0].percent", "50");
        jdbc.sql("insert into quick_percent (id, line, name, percent) values (?, 1, 'blue tags', 50)")
                .param(UUID.randomUUID())
                .update();
        mvc.perform(like.param("action", "like"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("name=\"things[1].price\" type=\"text\" value=\"\"")))
                .andExpect(content().string(containsString("value=\"4.99\"")));
        mvc.perform(buy(UUID.fromString(ID)).param("things[0].price", "9.87").param("action", "remove:0"))
                .andExpect(content().string(not(containsString("9.87"))));
        assertThat(number("select count(*) from receipt")).isZero();
    }

    @Test
    void keepsHerOwnPercentagesInHerOrder() throws Exception {
        mvc.perform(percent("50", "blue tags")).andExpect(redirectedUrl("/buy/percents"));
        mvc.perform(percent("12.5%", "Tuesdays")).andExpect(redirectedUrl("/buy/percents"));
        mvc.perform(percent("50", "Blue Tags")).andExpect(status().is(422));
        mvc.perform(percent("0", "nothing")).andExpect(status().is(422));
        mvc.perform(percent("101", "more than all")).andExpect(status().is(422));
        mvc.perform(percent("", "unsaid")).andExpect(status().is(422));
        UUID second = jdbc.sql("select id from quick_percent where name = 'Tuesdays'")
                .query(UUID.class)
                .single();
        mvc.perform(post("/buy/percents/" + second + "/earlier").with(InventedShop.owner()))
                .andExpect(status().isSeeOther());
        assertThat(jdbc.sql("select name from quick_percent order by line")
                        .query(String.class)
                        .list())
                .containsExactly("Tuesdays", "blue tags");
        mvc.perform(get("/buy").with(InventedShop.owner()))
                .andExpect(content().string(containsString("12.5% Tuesdays")));
        mvc.perform(post("/buy/percents/" + second + "/remove").with(InventedShop.owner()))
                .andExpect(status().isSeeOther());
        assertThat(text("select name from quick_percent where line = 1")).isEqualTo("blue tags");
    }

    private static MockHttpServletRequestBuilder percent(String percent, String name) {
        return post("/buy/percents")
                .with(InventedShop.owner())
                .param("percent", percent)
                .param("name", name);
    }

    /** Books one thing of 10.00 at a till total; {@code paid} is what the receipt says was paid, in cents. */
    private void settle(String till, String way, String settled, long expected) throws Exception {
        long before = account(way.equals("ROUNDING") ? "ROUNDING" : way.equals("OPEN") ? "PIECES" : "MONEY");
        mvc.perform(single(UUID.randomUUID(), "10.00").param("tillTotal", till)).andExpect(status().is(422));
        mvc.perform(single(UUID.randomUUID(), "10.00")
                        .param("tillTotal", till)
                        .param("settle", way)
                        .param("settled", settled))
                .andExpect(status().isSeeOther());
        long after = account(way.equals("ROUNDING") ? "ROUNDING" : way.equals("OPEN") ? "PIECES" : "MONEY");
        assertThat(Math.abs(after - before)).as(way).isEqualTo(Math.abs(expected));
        assertThat(number("select coalesce(sum(amount_minor), 0) from posting")).isZero();
    }

    private static MockHttpServletRequestBuilder single(UUID id, String price) {
        return buy(id).param("things[0].price", price);
    }

    private static MockHttpServletRequestBuilder mixed() {
        return mixed(ID);
    }

    private static MockHttpServletRequestBuilder mixed(String id) {
        return mixed(id, PIECE);
    }

    private static MockHttpServletRequestBuilder mixed(String id, String piece) {
        return buy(UUID.fromString(id))
                .param("things[0].piece", piece)
                .param("things[0].price", "4.99")
                .param("things[0].percent", "50")
                .param("things[0].kind", KIND)
                .param("things[1].price", "4.00")
                .param("things[1].count", "3")
                .param("things[2].price", "3")
                .param("things[2].use", "HOME")
                .param("things[3].price", ".51")
                .param("things[3].use", "CHARITY");
    }

    private static MockHttpServletRequestBuilder buy(UUID id) {
        return post("/buy")
                .with(InventedShop.owner())
                .param("id", id.toString())
                .param("source", Shelf.SOURCE.toString())
                .param("paidWith", Shelf.CASH.toString());
    }

    private long account(String account) {
        return number("select coalesce(sum(amount_minor), 0) from posting where account = '" + account + "'");
    }

    private long number(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }

    private String text(String sql) {
        return jdbc.sql(sql).query(String.class).single();
    }
}
