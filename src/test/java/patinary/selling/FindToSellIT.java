package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
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
import patinary.money.Amount;
import patinary.pieces.NewPieces;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** A sale and an offer list what can be looked through, and find the rest by words without losing what was typed. */
@ShopTest
class FindToSellIT {

    private static final String LAST = "Zinc pail";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationContext program;

    @Autowired
    private NewPieces pieces;

    @Autowired
    private JdbcClient jdbc;

    private UUID pail;

    @BeforeEach
    void fill() {
        for (int i = 0; i < Choosable.MOST; i++) {
            pieces.create("Jar", null, null);
        }
        pail = pieces.create(LAST, null, null);
    }

    @Test
    void aPieceBehindAllOthersIsFoundForASale() throws Exception {
        see(get("/sales/new"))
                .andExpect(content().string(containsString("name=\"pieceWords\"")))
                .andExpect(content().string(not(containsString(LAST))));
        see(sale("find").param("pieceWords", "pail"))
                .andExpect(content().string(containsString(LAST)))
                .andExpect(content().string(containsString("value=\"Robin\"")));
    }

    @Test
    void theEnterKeyInTheSearchOfASaleFindsAndDoesNotSave() throws Exception {
        see(sale("enter").param("pieceWords", "pail")).andExpect(content().string(containsString(LAST)));
        see(sale("enter").param("foundBy", "pail")).andExpect(content().string(not(containsString(LAST))));
        assertThat(jdbc.sql("select count(*) from sale").query(Long.class).single())
                .isZero();
    }

    @Test
    void anOfferBehindAllOthersIsFoundForASale() throws Exception {
        InventedGoods goods = new InventedGoods(program);
        for (int i = 0; i <= Choosable.MOST; i++) {
            offer(goods, "Crock", pieces.create("Crock", null, null));
        }
        offer(goods, "Painted pail", pail);
        see(get("/sales/new")).andExpect(content().string(not(containsString("Painted pail"))));
        see(sale("find").param("pieceWords", "ZINC")).andExpect(content().string(containsString("Painted pail")));
    }

    @Test
    void aPieceBehindAllOthersIsFoundForAnOffer() throws Exception {
        see(get("/offers/new")).andExpect(content().string(not(containsString(LAST))));
        for (String act : List.of("find", "enter")) {
            see(post("/offers/new")
                            .param("id", UUID.randomUUID().toString())
                            .param("act", act)
                            .param("note", "with a lid")
                            .param("pieceWords", "pail"))
                    .andExpect(content().string(containsString(LAST)))
                    .andExpect(content().string(containsString("with a lid")));
        }
    }

    @Test
    void whereAllFitThereIsNothingToFind() throws Exception {
        jdbc.sql("delete from piece_state where piece_id in (select id from piece where title = 'Jar')")
                .update();
        see(get("/sales/new"))
                .andExpect(content().string(containsString(LAST)))
                .andExpect(content().string(not(containsString("name=\"pieceWords\""))));
    }

    private void offer(InventedGoods goods, String title, UUID piece) {
        LocalDate day = LocalDate.of(2025, 2, 2);
        program.getBean(SellingDocuments.class)
                .record(new Offer(
                        UUID.randomUUID(),
                        new Offer.Content(
                                day,
                                "",
                                title,
                                null,
                                null,
                                List.of(new Offer.OfferedPiece(piece, BigDecimal.ONE)),
                                List.of(goods.stall),
                                List.of(new Offer.Price(day, Amount.of(1000))),
                                List.of())));
    }

    private static MockHttpServletRequestBuilder sale(String act) {
        return post("/sales/new")
                .param("id", UUID.randomUUID().toString())
                .param("act", act)
                .param("buyer", "Robin");
    }

    private ResultActions see(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner())).andExpect(status().isOk());
    }
}
