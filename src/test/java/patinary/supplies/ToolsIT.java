package patinary.supplies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
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
import patinary.ledger.Check;
import patinary.shop.CurrentShop;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Tools that wear, through the pages; figures worked by hand. */
@ShopTest
class ToolsIT {

    private static final LocalDate DAY = StockedBench.DAY;

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private CurrentShop shop;

    @Autowired
    private Check check;

    private StockedBench bench;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
    }

    /** A brush of 10.00 for 4 uses: 2.50 a use; on two pieces 1.25 each. */
    @Test
    void aTickTakesItsPartOfThePriceToThePieces() throws Exception {
        UUID brush = tool("Round brush", "BY_USE", "4");
        bought(brush, "10.00");
        UUID entry = tick(brush, DAY.plusDays(1), bench.box, bench.crate);

        assertThat(bench.landed()).containsEntry("Small box", 125L).containsEntry("Long crate", 125L);
        read("/supplies/" + brush)
                .andExpect(content()
                        .string(allOf(
                                containsString("3 uses left"),
                                containsString("about $2.50 a use; one is thought to last 4"),
                                containsString("Used 1 times"),
                                not(containsString("How far your eye is off")))));
        read("/bench/" + entry).andExpect(content().string(containsString("Round brush")));
        read("/pieces/" + bench.box)
                .andExpect(content().string(allOf(containsString("Round brush"), containsString("$1.25"))));
        // Changed, the entry comes back as a tick and not as a line.
        read("/bench/" + entry + "/edit")
                .andExpect(
                        content().string(containsString("id=\"tool-" + brush + "\" value=\"" + brush + "\" checked")));
        assertThat(check.run()).isEmpty();
    }

    /** Thought to last 2 pieces at 5.00 each, it lasts 5: three cost nothing, nothing waits, the next one is whole. */
    @Test
    void aToolThatOutlivesItsUsesSaysSoAndOffersTheBetterNumber() throws Exception {
        UUID brush = tool("Round brush", "BY_USE", "2");
        bought(brush, "10.00");
        for (int use = 1; use <= 5; use++) {
            tick(brush, DAY.plusDays(use), bench.box);
        }
        assertThat(bench.landed()).containsEntry("Small box", 1000L);
        read("/supplies/" + brush)
                .andExpect(content()
                        .string(allOf(
                                containsString("0 uses left"),
                                containsString("Lasted 5 of 2 thought, and still going"),
                                not(containsString("Not yet costed</span>")))));
        wornOut(brush, "0", "SHARE").andExpect(redirectedUrl("/supplies/" + brush));
        read("/supplies/" + brush)
                .andExpect(content()
                        .string(allOf(
                                containsString("The last one lasted 5 of 2 thought"),
                                containsString("Reckon with 5 from today"))));

        send(post("/supplies/" + brush + "/lasts")).andExpect(redirectedUrl("/supplies/" + brush));
        bench.receipt(
                LineKind.SUPPLY, brush, BigDecimal.ONE, "10.00", shop.today().plusDays(1));
        tick(brush, shop.today().plusDays(2), bench.crate);
        assertThat(bench.landed()).containsEntry("Small box", 1000L).containsEntry("Long crate", 200L);
        read("/supplies/" + brush)
                .andExpect(content()
                        .string(allOf(
                                containsString("4 uses left"),
                                containsString("The last one lasted 5 of 2 thought"),
                                not(containsString("Reckon with")))));
        read("/supplies/" + brush + "/edit")
                .andExpect(content().string(containsString("name=\"uses\" type=\"text\" value=\"5\"")));

        send(post("/supplies/" + brush + "/lasts/undo")
                .param("from", shop.today().toString()));
        read("/supplies/" + brush).andExpect(content().string(containsString("one is thought to last 2")));
        assertThat(check.run()).isEmpty();
    }

    /** 10.00 for 4 uses, worn out after one on the box: the other 7.50 go to the box. Lost instead, they are waste. */
    @Test
    void wornOutEarlyTheRestGoesOverItsUsesAndLostItIsWaste() throws Exception {
        UUID brush = tool("Round brush", "BY_USE", "4");
        bought(brush, "10.00");
        tick(brush, DAY.plusDays(1), bench.box);
        wornOut(brush, "0", "SHARE");
        assertThat(bench.landed()).containsEntry("Small box", 1000L);

        UUID blade = tool("Blade", "BY_USE", "4");
        bought(blade, "6.00");
        tick(blade, DAY.plusDays(1), bench.crate);
        wornOut(blade, "0", "WASTE");
        assertThat(bench.landed()).containsEntry("Long crate", 150L);
        assertThat(bench.balance("WRITE_OFFS")).isEqualTo(450);
        read("/supplies/" + blade).andExpect(content().string(not(containsString("The last one lasted"))));
    }

    /** Three thirds of a sheet of 1.00 are 0.33, 0.34 and 0.33, and nothing of it is left. */
    @Test
    void aThirdIsRoundedSoThatThreeAreAll() throws Exception {
        UUID sandpaper = tool("Sandpaper 180", "BY_USE", "3");
        bought(sandpaper, "1.00");
        for (int use = 1; use <= 3; use++) {
            tick(sandpaper, DAY.plusDays(use), bench.box);
        }
        assertThat(bench.landed()).containsEntry("Small box", 100L);
        assertThat(bench.balance("BENCH")).isZero();
        assertThat(jdbc.sql("select quantity from stock_left where supply_id = ? and place = 'BENCH'")
                        .param(sandpaper)
                        .query(BigDecimal.class)
                        .optional()
                        .orElse(BigDecimal.ZERO))
                .isEqualByComparingTo("0");
    }

    /** Nothing about a tool blocks an entry: never bought, on no piece, and twice by a line of its own. */
    @Test
    void unknownWearBlocksNothing() throws Exception {
        UUID brush = tool("Round brush", "BY_USE", "4");
        tick(brush, DAY.plusDays(1));
        tick(brush, DAY.plusDays(1), bench.box);
        UUID entry = UUID.randomUUID();
        send(entry(entry, DAY.plusDays(2), bench.box)
                        .param("uses[0].supply", brush.toString())
                        .param("uses[0].quantity", "2 uses")
                        .param("uses[0].how", "EYE")
                        .param("uses[0].share", "EQUAL"))
                .andExpect(redirectedUrl("/bench/" + entry));
        UUID once = UUID.randomUUID();
        send(entry(once, DAY.plusDays(3), bench.box)
                        .param("uses[0].supply", brush.toString())
                        .param("uses[0].how", "EYE")
                        .param("uses[0].share", "EQUAL"))
                .andExpect(redirectedUrl("/bench/" + once));
        assertThat(jdbc.sql("select sum(tool_uses) from bench_use")
                        .query(BigDecimal.class)
                        .single())
                .isEqualByComparingTo("5");
        assertThat(jdbc.sql("select count(*) from uncosted_use")
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(bench.landed()).containsEntry("Small box", 0L);
    }

    @Test
    void theBenchPageTicksAToolWithOneTap() throws Exception {
        UUID brush = tool("Round brush", "BY_USE", "4");
        bought(brush, "10.00");
        read("/bench/now")
                .andExpect(content()
                        .string(allOf(
                                containsString("name=\"tools\" id=\"tool-" + brush + "\""),
                                not(containsString("name=\"uses[0].supply\" value=\"" + brush)))));
        UUID entry = UUID.randomUUID();
        send(post("/bench/now")
                        .param("id", entry.toString())
                        .param("pieces", bench.box.toString())
                        .param("tools", brush.toString()))
                .andExpect(redirectedUrl("/bench/now?kept=" + entry));
        assertThat(bench.landed()).containsEntry("Small box", 250L);
        assertThat(jdbc.sql("select typed from bench_use").query(String.class).single())
                .isEqualTo("1 use");
    }

    /** Tools are not counted by looking: one brush that stands there says nothing about its wear. */
    @Test
    void theCountingPageLeavesToolsOut() throws Exception {
        UUID brush = tool("Round brush", "BY_USE", "4");
        bought(brush, "10.00");
        read("/count").andExpect(content().string(not(containsString("Round brush"))));
    }

    /** Bought for the bench, the receipt says itself that it is an expense; taken from the shelf, it becomes one. */
    @Test
    void aToolAtOnceIsAnExpenseOnItsDay() throws Exception {
        UUID cloth = tool("Tack cloth", "AT_ONCE", "");
        UUID receipt = UUID.randomUUID();
        UUID cash = UUID.randomUUID();
        jdbc.sql("insert into money_place (id, name, kind, version) values (?, 'Cash box', 'CASH', 0)")
                .param(cash)
                .update();
        send(post("/receipts")
                        .param("id", receipt.toString())
                        .param("date", DAY.toString())
                        .param("paidWith", cash.toString())
                        .param("tillTotal", "8.00")
                        .param("lines[0].kind", "SUPPLY")
                        .param("lines[0].title", "Tack cloths")
                        .param("lines[0].price", "4.00")
                        .param("lines[0].quantity", "2")
                        .param("lines[0].supply", cloth.toString())
                        .param("lines[0].content", "1"))
                .andExpect(status().isSeeOther());
        assertThat(bench.balance("EXPENSE")).isEqualTo(800);
        assertThat(bench.balance("BENCH")).isZero();
        assertThat(jdbc.sql("select category from posting where account = 'EXPENSE'")
                        .query(String.class)
                        .single())
                .isEqualTo("small_tools");

        bench.receipt(LineKind.SHELF, cloth, BigDecimal.valueOf(10), "30.00", DAY);
        UUID taking = UUID.randomUUID();
        take(cloth, taking, "2", true);
        assertThat(bench.balance("EXPENSE")).isEqualTo(800 + 600);
        assertThat(bench.balance("SHELF")).isEqualTo(2400);
        assertThat(bench.balance("BENCH")).isZero();
        read("/supplies/takings/" + taking)
                .andExpect(content()
                        .string(allOf(
                                containsString("Cost that became an expense"),
                                containsString("Tax on own use may be owed on $6.00"))));
        read("/year/2025").andExpect(content().string(not(containsString("class=\"error\""))));
        assertThat(check.run()).isEmpty();
    }

    /** 5.00 marked and 2.50 not: the year's sum says both, on the shelf's page, the year's page and in its file. */
    @Test
    void whatWasTakenForOwnUseIsSummedByYear() throws Exception {
        bench.receipt(LineKind.SHELF, bench.paint, BigDecimal.valueOf(200), "20.00", DAY);
        UUID marked = UUID.randomUUID();
        take(bench.paint, marked, "50 ml", true);
        take(bench.paint, UUID.randomUUID(), "25 ml", false);
        read("/supplies/takings/" + marked)
                .andExpect(content().string(containsString("Tax on own use may be owed on $5.00")));
        read("/supplies/takings?year=2025")
                .andExpect(content()
                        .string(allOf(containsString("$7.50"), containsString("$5.00"), containsString("$2.50"))));
        read("/supplies/shelf?day=2025-12-31")
                .andExpect(content()
                        .string(containsString("in 2025: $7.50 at cost; tax on own use may be owed on $5.00")));
        read("/year/2025")
                .andExpect(content().string(containsString("$7.50. Sales tax on own use may be owed on $5.00")));
        read("/year/2025/taken-for-own-use.csv")
                .andExpect(content().string(allOf(containsString("Pond green"), containsString("5.00"))));
        read("/supplies/takings?year=soon").andExpect(status().isOk());
        read("/supplies/takings?year=2024").andExpect(content().string(containsString("Nothing was taken")));
    }

    @Test
    void whatIsWrongIsToldBesideItsField() throws Exception {
        send(form("Round brush", "BY_USE", "").param("dimension", "COUNT"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"uses-error\"")));
        send(form("Round brush", "BY_USE", "4").param("dimension", "VOLUME"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("id=\"wear-error\"")));
        send(form("Round brush", "BY_USE", "4")
                        .param("dimension", "COUNT")
                        .param("measures[0].name", "use")
                        .param("measures[0].quantity", "0.5"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Call it something else")));
        UUID brush = tool("Round brush", "BY_USE", "4");
        wornOut(brush, "some", "SHARE")
                .andExpect(status().is(422))
                .andExpect(
                        content().string(allOf(containsString("id=\"left-error\""), containsString("value=\"some\""))));
        send(post("/supplies/" + bench.paint + "/worn-out")
                        .param("id", UUID.randomUUID().toString())
                        .param("left", "0"))
                .andExpect(status().isNotFound());
        UUID entry = UUID.randomUUID();
        send(entry(entry, DAY, bench.box).param("tools", bench.paint.toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("no tool any more")));
    }

    private UUID tool(String name, String wear, String uses) throws Exception {
        send(form(name, wear, uses).param("dimension", "COUNT")).andExpect(status().isSeeOther());
        return jdbc.sql("select id from supply where name = ?")
                .param(name)
                .query(UUID.class)
                .single();
    }

    private MockHttpServletRequestBuilder form(String name, String wear, String uses) {
        return post("/supplies/new")
                .param("name", name)
                .param("line", bench.line.toString())
                .param("wear", wear)
                .param("uses", uses);
    }

    private void bought(UUID tool, String dollars) {
        bench.receipt(LineKind.SUPPLY, tool, BigDecimal.ONE, dollars, DAY);
    }

    private UUID tick(UUID tool, LocalDate day, UUID... pieces) throws Exception {
        UUID id = UUID.randomUUID();
        send(entry(id, day, pieces).param("tools", tool.toString())).andExpect(redirectedUrl("/bench/" + id));
        return id;
    }

    private MockHttpServletRequestBuilder entry(UUID id, LocalDate day, UUID... pieces) {
        MockHttpServletRequestBuilder request = post("/bench/new")
                .param("id", id.toString())
                .param("day", "OTHER")
                .param("date", day.toString());
        for (UUID piece : pieces) {
            request.param("pieces", piece.toString());
        }
        return request;
    }

    private void take(UUID supply, UUID id, String quantity, boolean marked) throws Exception {
        send(post("/supplies/" + supply + "/take")
                        .param("id", id.toString())
                        .param("date", DAY.plusDays(1).toString())
                        .param("quantity", quantity)
                        .param("ownUseTax", Boolean.toString(marked)))
                .andExpect(redirectedUrl("/supplies/takings/" + id));
    }

    private ResultActions wornOut(UUID tool, String left, String how) throws Exception {
        return send(post("/supplies/" + tool + "/worn-out")
                .param("id", UUID.randomUUID().toString())
                .param("left", left)
                .param("how", how));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
    }
}
