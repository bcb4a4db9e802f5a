package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.net.URI;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.ShopTest;

/** A buyer brings a thing back and takes another one. Goods and buyer are invented. */
@ShopTest
class ExchangeIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    private InventedGoods goods;
    private final UUID sale = UUID.randomUUID();

    @BeforeEach
    void stock() {
        goods = new InventedGoods(program);
    }

    /** The tray at 40.00 comes back; the jug at 55.00 is taken: 15.00 more in the cash box, and the tray is in stock at its 8.00. */
    @Test
    void whatComesBackPaysForWhatIsTakenInstead() throws Exception {
        mvc.perform(sell(sale, "P0001", "40")).andExpect(status().is3xxRedirection());
        mvc.perform(get("/sales/" + sale + "/refund?exchange=true").with(owner()))
                .andExpect(content().string(containsString("value=\"40.00\"")))
                .andExpect(content().string(not(containsString("??"))));
        String next = Objects.requireNonNull(mvc.perform(post("/sales/" + sale + "/refund")
                        .with(owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("exchange", "true")
                        .param("date", "2025-03-12")
                        .param("lines[0].thing", goods.tray.toString())
                        .param("lines[0].amount", "40")
                        .param("lines[0].comesBack", "true")
                        .param("way", "STORE_CREDIT"))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl());
        assertThat(next).startsWith("/sales/new").contains("credit=40.00");
        mvc.perform(get(URI.create(next)).with(owner()))
                .andExpect(content().string(containsString("value=\"40.00\"")))
                .andExpect(content().string(containsString("InventedKit")));
        mvc.perform(sell(UUID.randomUUID(), "P0002", "55").param("credit", "40"))
                .andExpect(status().is3xxRedirection());

        Map<String, Long> balances = goods.balances();
        assertThat(balances)
                .containsEntry("SALES", -9_500L)
                .containsEntry("REFUNDS", 4_000L)
                .containsEntry("PIECES", 800L)
                .containsEntry("COST_OF_PIECES", 400L)
                .doesNotContainKey("STORE_CREDIT_GIVEN");
        assertThat(goods.money(goods.cash)).isEqualTo(5_500);
        assertThat(goods.state(goods.tray)).isNotEqualTo("SOLD");
    }

    private MockHttpServletRequestBuilder sell(UUID id, String code, String price) {
        return post("/sales/new")
                .with(owner())
                .param("id", id.toString())
                .param("date", id.equals(sale) ? "2025-03-10" : "2025-03-12")
                .param("channel", goods.stall.toString())
                .param("buyer", "InventedKit")
                .param("lines[0].codes", code)
                .param("lines[0].price", price);
    }
}
