package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Books;
import patinary.supplies.Supplies;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Selling at the stall, from the form to the books. Goods and buyers are invented. */
@ShopTest
class StallIT {

    private static final String DAY = "2025-03-10";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private Supplies supplies;

    @Autowired
    private JdbcClient jdbc;

    private InventedGoods goods;
    private final UUID offer = UUID.randomUUID();

    @BeforeEach
    void stock() throws Exception {
        goods = new InventedGoods(program);
        send(post("/offers/new")
                .param("id", offer.toString())
                .param("date", "2025-03-01")
                .param("codes", "P0001")
                .param("price", "45")
                .param("channels", goods.market.toString()));
    }

    @Test
    void sellsWhatIsOnOffer() throws Exception {
        page("/stall?q=p0001")
                .andExpect(content().string(containsString("value=\"45.00\"")))
                .andExpect(content().string(not(containsString("??"))));
        page("/stall?offer=" + offer).andExpect(content().string(containsString("value=\"45.00\"")));
        page("/stall?piece=" + goods.tray).andExpect(content().string(containsString("value=\"45.00\"")));
        send(sale(UUID.randomUUID(), "P0001", "42")).andExpect(redirectedUrl("/stall"));
        assertThat(goods.money(goods.cash)).isEqualTo(4200);
        assertThat(jdbc.sql("select state from offer_state where offer_id = ?")
                        .param(offer)
                        .query(String.class)
                        .single())
                .isEqualTo("SOLD");
        page("/sales?only=unposted").andExpect(content().string(not(containsString("42.00"))));
    }

    @Test
    void sellsAPieceThatIsOnNoOffer() throws Exception {
        page("/stall?piece=" + goods.jug)
                .andExpect(content().string(containsString("value=\"P0002\"")))
                .andExpect(content().string(containsString("Enamel jug")));
        send(sale(UUID.randomUUID(), "p0002", "")).andExpect(status().isUnprocessableContent());
        send(sale(UUID.randomUUID(), "P9999", "5"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("P9999")));
        send(sale(UUID.randomUUID(), "p0002", "12.50")).andExpect(redirectedUrl("/stall"));
        assertThat(goods.state(goods.jug)).isEqualTo("SOLD");
    }

    /** 45.00 and 2.70 of tax make 47.70; two twenties are too little; a fifty gives 2.30 back. */
    @Test
    void reckonsTheChangeWithTheTaxInIt() throws Exception {
        UUID id = UUID.randomUUID();
        send(sale(id, "P0001", "45").param("tax", "2.70").param("got", "40"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("less than $47.70")))
                .andExpect(content().string(containsString("value=\"40\"")));
        assertThat(goods.count("sale")).isZero();
        String said = Objects.requireNonNull(
                        send(sale(id, "P0001", "45").param("tax", "2.70").param("got", "50"))
                                .andExpect(redirectedUrl("/stall"))
                                .andReturn()
                                .getFlashMap()
                                .get("notice"))
                .toString();
        assertThat(said).contains("$2.30");
        assertThat(goods.balances()).containsEntry("SALES_TAX_DUE", -270L);
    }

    @Test
    void aPieceSoldTwiceIsOneSaleAndTheSecondIsToldOfTheFirst() throws Exception {
        UUID first = UUID.randomUUID();
        send(sale(first, "P0001", "45").param("offer", offer.toString())).andExpect(redirectedUrl("/stall"));
        send(sale(first, "P0001", "45").param("offer", offer.toString())).andExpect(redirectedUrl("/stall"));
        send(sale(UUID.randomUUID(), "P0001", "40"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("P0001 was already sold on 10 Mar 2025 for $45.00")))
                .andExpect(content().string(containsString("/sales/" + first)))
                .andExpect(content().string(containsString("/sales/new?piece=P0001&amp;price=40&amp;channel=")))
                .andExpect(content().string(containsString("value=\"40\"")));
        assertThat(goods.count("sale")).isEqualTo(1);
        assertThat(goods.money(goods.cash)).isEqualTo(4500);
        page("/stall/sold/P0001").andExpect(redirectedUrl("/sales/" + first));
    }

    @Test
    void twoPhonesAtTheSameMomentSellAPieceOnce() throws Exception {
        Callable<Integer> one = () -> send(sale(UUID.randomUUID(), "P0001", "45"))
                .andReturn()
                .getResponse()
                .getStatus();
        ExecutorService phones = Executors.newFixedThreadPool(2);
        try {
            List<Future<Integer>> answers = phones.invokeAll(List.of(one, one));
            assertThat(List.of(answers.get(0).get(), answers.get(1).get())).containsExactlyInAnyOrder(303, 422);
        } finally {
            phones.shutdown();
        }
        assertThat(goods.count("sale")).isEqualTo(1);
        assertThat(goods.money(goods.cash)).isEqualTo(4500);
    }

    /** The road of a phone that kept the sale: once, however often it is sent; the second phone is told of the first. */
    @Test
    void twoPhonesThatWereWithoutReceptionSellAPieceOnce() throws Exception {
        UUID one = UUID.randomUUID();
        UUID other = UUID.randomUUID();
        deliver(one, "45")
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.href").value("/sales/" + one));
        deliver(one, "45")
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.words").value("Sold: Tin tray."));
        deliver(other, "40")
                .andExpect(status().isUnprocessableContent())
                .andExpect(
                        jsonPath("$.problems[0].words").value(containsString("P0001 was already sold on 10 Mar 2025")));
        assertThat(goods.count("sale")).isEqualTo(1);
        assertThat(goods.money(goods.cash)).isEqualTo(4500);

        send(post("/sales/" + one + "/remove")).andExpect(redirectedUrl("/sales"));
        deliver(other, "40").andExpect(status().isCreated());
        assertThat(goods.money(goods.cash)).isEqualTo(4000);
    }

    @Test
    void aPhoneGetsTheGoodsAndTheChoices() throws Exception {
        mvc.perform(get("/phone/lists").accept("application/json").with(InventedShop.owner()))
                .andExpect(jsonPath("$.offers[0].codes").value("P0001"))
                .andExpect(jsonPath("$.offers[0].price").value(4500))
                .andExpect(jsonPath("$.offers[0].pieces[0]").value(goods.tray.toString()))
                .andExpect(jsonPath("$.cashplaces[?(@.usual == true)].text").value("Cash box"))
                .andExpect(jsonPath("$.channels[?(@.usual == true)].text").value("Stall"))
                .andExpect(jsonPath("$.channels[?(@.passes == true)].text").value("Marketplace"));
    }

    /** What opens before the sign-in tells nothing of the shop. */
    @Test
    void signedOutThePageIsEmpty() throws Exception {
        mvc.perform(get("/stall"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("data-outbox=\"stall\"")))
                .andExpect(content().string(not(containsString("Tin tray"))))
                .andExpect(content().string(not(containsString("Cash box"))))
                .andExpect(content().string(not(containsString("stall-total"))));
    }

    @Test
    void whatWasSoldTodayIsAddedUpAndCanBeUndone() throws Exception {
        UUID id = UUID.randomUUID();
        send(sale(id, "P0001", "45", "")).andExpect(redirectedUrl("/stall"));
        page("/stall")
                .andExpect(content().string(containsString("Undo: Tin tray")))
                .andExpect(content().string(containsString("id=\"stall-total\">$45.00")));
        send(post("/stall/" + id + "/undo")).andExpect(redirectedUrl("/stall"));
        assertThat(goods.money(goods.cash)).isZero();
        assertThat(goods.state(goods.tray)).isEqualTo("OFFERED");
    }

    @Test
    void oldAddressesLeadHere() throws Exception {
        page("/sales/quick?q=tray").andExpect(redirectedUrl("/stall?q=tray"));
        page("/sales/quick/" + offer).andExpect(redirectedUrl("/stall?offer=" + offer));
    }

    private MockHttpServletRequestBuilder sale(UUID id, String codes, String price) {
        return sale(id, codes, price, DAY);
    }

    private MockHttpServletRequestBuilder sale(UUID id, String codes, String price, String day) {
        return post("/stall")
                .param("id", id.toString())
                .param("codes", codes)
                .param("price", price)
                .param("channel", goods.stall.toString())
                .param("place", goods.cash.toString())
                .param("date", day);
    }

    private ResultActions deliver(UUID id, String price) throws Exception {
        return send(sale(id, "P0001", price).accept("application/json").header("Idempotency-Key", "\"" + id + "\""));
    }

    private ResultActions page(String address) throws Exception {
        return mvc.perform(get(address).with(InventedShop.owner()));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
