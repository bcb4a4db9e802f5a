package patinary.selling;

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
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Check;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/**
 * One piece and two orders: a tray that cost 8.00, wanted for 40.00 on the marketplace, which keeps 10 % + 0.30, and by a
 * second buyer. All figures worked by hand from {@link InventedGoods}.
 */
@ShopTest
class SoldTwiceIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Check check;

    private InventedGoods goods;
    private final UUID first = UUID.randomUUID();
    private final UUID second = UUID.randomUUID();

    @BeforeEach
    void stock() throws Exception {
        goods = new InventedGoods(program);
        perform(order(first, "2025-03-10").param("buyer", "Kit, an invented buyer"))
                .andExpect(redirectedUrl("/sales/" + first));
    }

    @Test
    void showsBothOrdersAndStoresNothing() throws Exception {
        perform(order(second, "2025-03-11").param("buyer", "Lou, another one"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("The orders side by side")))
                .andExpect(content().string(containsString("Kit, an invented buyer")))
                .andExpect(content().string(containsString("Lou, another one")))
                .andExpect(content().string(containsString("/sales/" + first)));
        assertThat(goods.count("sale")).isEqualTo(1);
        perform(settle("", "")).andExpect(status().is(422)).andExpect(content().string(containsString("Choose which")));
    }

    /** 40.00 and 6.00 came in and went back; of the fee of 4.90 the channel returned 4.00. */
    @Test
    void theLaterOrderGivesWay() throws Exception {
        perform(settle("OTHER", "4.00").param("shipping", "6")).andExpect(redirectedUrl("/sales/" + second));
        assertThat(goods.balances())
                .containsEntry("SALES", -8000L)
                .containsEntry("SHIPPING_CHARGED", -600L)
                .containsEntry("REFUNDS", 4600L)
                .containsEntry("FEES", 430L + 90)
                .containsEntry("COST_OF_PIECES", 800L);
        assertThat(goods.money(goods.balance)).isEqualTo(4000 - 430 - 90);
        assertThat(owner()).isEqualTo(first);
        // The piece earned what the first order paid, and bears nothing of the second.
        assertThat(jdbc.sql("select profit_minor from piece_figures where piece_id = ?")
                        .param(goods.tray)
                        .query(Long.class)
                        .single())
                .isEqualTo(4000 - 430 - 800);
        mvc.perform(get("/sales/" + second).with(InventedShop.owner()))
                .andExpect(content().string(containsString("Cancelled")))
                .andExpect(content().string(containsString("−$0.90")));
        mvc.perform(get("/sales?only=cancelled").with(InventedShop.owner()))
                .andExpect(content().string(containsString("/sales/" + second)))
                .andExpect(content().string(not(containsString("/sales/" + first))));
        assertThat(check.run()).isEmpty();
    }

    @Test
    void theEarlierOrderGivesWayAndThePieceGoesOver() throws Exception {
        perform(settle("THIS", "")).andExpect(redirectedUrl("/sales/" + second));
        assertThat(goods.balances())
                .containsEntry("SALES", -8000L)
                .containsEntry("REFUNDS", 4000L)
                .containsEntry("FEES", 860L)
                .containsEntry("COST_OF_PIECES", 800L)
                .containsEntry("PIECES", 400L);
        assertThat(owner()).isEqualTo(second);
        assertThat(check.run()).isEmpty();

        // Taking it back is refused while the later order has the piece, and works once that is undone.
        perform(post("/sales/" + first + "/delivered"));
        assertThat(owner()).isEqualTo(second);
        assertThat(goods.count("refund")).isEqualTo(1);
        perform(post("/sales/" + second + "/remove"));
        perform(post("/sales/" + first + "/delivered"));
        assertThat(owner()).isEqualTo(first);
        assertThat(goods.count("refund")).isZero();
        assertThat(goods.balances()).containsEntry("SALES", -4000L).doesNotContainKey("REFUNDS");
        assertThat(check.run()).isEmpty();
    }

    @Test
    void anOrderThatWasSentGivesWayNoMore() throws Exception {
        perform(post("/sales/" + first + "/posted").param("day", "2025-03-11"));
        perform(settle("THIS", ""))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("was sent on 2025-03-11")));
        assertThat(goods.count("sale")).isEqualTo(1);
        assertThat(goods.count("refund")).isZero();
    }

    @Test
    void whatIsRefusedLeavesBothAsTheyWere() throws Exception {
        perform(settle("THIS", "4.31"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("At most 4.30")));
        assertThat(owner()).isEqualTo(first);
        assertThat(goods.count("sale_undelivered")).isZero();
    }

    /** An order that owes everything has nothing to be given back but the debt. */
    @Test
    void anUnpaidOrderIsSimplyNoLongerOwed() throws Exception {
        perform(settle("OTHER", "").param("owed", "40.00").param("fee", "0"))
                .andExpect(redirectedUrl("/sales/" + second));
        assertThat(goods.balances()).doesNotContainKey("RECEIVABLE").containsEntry("REFUNDS", 4000L);
        assertThat(goods.money(goods.balance)).isEqualTo(4000 - 430);
    }

    /** The buyer cancels before it is sent; 10.00 is kept. The piece is free for a sale of the same day. */
    @Test
    void cancelsAnOrderInPartGivenBack() throws Exception {
        mvc.perform(get("/sales/" + first + "/refund?cancelled=true").with(InventedShop.owner()))
                .andExpect(content().string(containsString("value=\"40.00\"")));
        perform(cancel().param("lines[0].comesBack", "true")).andExpect(status().is(422));
        perform(cancel()).andExpect(redirectedUrl("/sales/" + first));
        assertThat(goods.state(goods.tray)).isEqualTo("FOUND");
        assertThat(goods.balances())
                .containsEntry("SALES", -4000L)
                .containsEntry("REFUNDS", 3000L)
                .containsEntry("PIECES", 1200L)
                .doesNotContainKey("COST_OF_PIECES");
        perform(order(second, "2025-03-10")).andExpect(redirectedUrl("/sales/" + second));
        assertThat(owner()).isEqualTo(second);
        assertThat(check.run()).isEmpty();
        // Changing the words of the cancelled order does not send it.
        perform(order(first, "2025-03-10", "/sales/" + first + "/edit")
                        .param("version", String.valueOf(version()))
                        .param("buyer", "Kit"))
                .andExpect(redirectedUrl("/sales/" + first));
        assertThat(owner()).isEqualTo(second);
    }

    private long version() {
        return jdbc.sql("select version from document where id = ?")
                .param(first)
                .query(Long.class)
                .single();
    }

    private MockHttpServletRequestBuilder cancel() {
        return post("/sales/" + first + "/refund")
                .param("id", UUID.randomUUID().toString())
                .param("date", "2025-03-12")
                .param("lines[0].thing", goods.tray.toString())
                .param("lines[0].amount", "30.00")
                .param("lines[0].never", "true")
                .param("way", "PLACE")
                .param("place", goods.balance.toString());
    }

    private MockHttpServletRequestBuilder settle(String keep, String feeBack) {
        return order(second, "2025-03-11")
                .param("act", "settle")
                .param("twiceKeep", keep)
                .param("twiceDate", "2025-03-12")
                .param("twiceFeeBack", feeBack);
    }

    private MockHttpServletRequestBuilder order(UUID id, String day) {
        return order(id, day, "/sales/new");
    }

    private MockHttpServletRequestBuilder order(UUID id, String day, String to) {
        return post(to).param("id", id.toString())
                .param("date", day)
                .param("channel", goods.market.toString())
                .param("lines[0].codes", "P0001")
                .param("lines[0].price", "40.00");
    }

    private UUID owner() {
        return jdbc.sql("select sale_id from sale_piece where piece_id = ?")
                .param(goods.tray)
                .query(UUID.class)
                .single();
    }

    private ResultActions perform(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
