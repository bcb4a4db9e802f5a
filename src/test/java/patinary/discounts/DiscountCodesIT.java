package patinary.discounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

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
import patinary.testing.ShopTest;
import patinary.testing.Trestle;

/** Codes, percentages, tips and things given along, from the form to the books. Pieces and codes are invented. */
@ShopTest
class DiscountCodesIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private DiscountBook book;

    private Trestle trestle;
    private final UUID sale = UUID.randomUUID();

    @BeforeEach
    void stock() throws Exception {
        trestle = new Trestle(program);
        trestle.piece("Tin tray", "Box 1");
        trestle.piece("Key tag", "Box 1");
        code("SPRING", "10", "", "2025-03-01", "2025-05-31").andExpect(status().is3xxRedirection());
    }

    /** 10 % of 40.00 is 4.00; with a tip of 2.00 the buyer pays 38.00. */
    @Test
    void aCodeTakesItsPartAndTheTipIsIncome() throws Exception {
        mvc.perform(sale("2025-03-10").param("discountCode", "spring").param("tip", "2"))
                .andExpect(status().is3xxRedirection());
        assertThat(posted("SALES")).isEqualTo(-3600);
        assertThat(posted("OTHER_INCOME")).isEqualTo(-200);
        assertThat(posted("MONEY")).isEqualTo(3800);
        mvc.perform(get("/sales/" + sale).with(owner()))
                .andExpect(content().string(containsString("SPRING")))
                .andExpect(content().string(containsString("$2.00")));
        mvc.perform(get("/year/2025").with(owner())).andExpect(content().string(containsString("$38.00")));
        assertThat(book.all()).singleElement().satisfies(row -> {
            assertThat(row.sales()).isEqualTo(1);
            assertThat(row.offMinor()).isEqualTo(400);
            assertThat(row.netMinor()).isEqualTo(3600);
        });
        mvc.perform(get("/discount-codes").with(owner()))
                .andExpect(content().string(containsString("SPRING")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/sales?q=spring").with(owner())).andExpect(content().string(containsString("Tin tray")));
    }

    @Test
    void aCodeThatIsUnknownOrOverIsToldBesideItsField() throws Exception {
        mvc.perform(sale("2025-06-01").param("discountCode", "SPRING"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("does not hold on the day")));
        mvc.perform(sale("2025-03-10").param("discountCode", "AUTUMN"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("There is no such code")))
                .andExpect(content().string(containsString("value=\"AUTUMN\"")));
    }

    /** A code that was changed since does not reach back. */
    @Test
    void whatWasTypedGoesBeforeTheCodeAndOldSalesStay() throws Exception {
        mvc.perform(sale("2025-03-10").param("discountCode", "SPRING").param("discount", "12.5 %"))
                .andExpect(status().is3xxRedirection());
        assertThat(posted("SALES")).isEqualTo(-3500);
        UUID id = jdbc.sql("select id from discount_code").query(UUID.class).single();
        mvc.perform(post("/discount-codes/" + id)
                        .with(owner())
                        .param("version", "0")
                        .param("code", "SPRING")
                        .param("amount", "30")
                        .param("validFrom", "2026-01-01"))
                .andExpect(status().is3xxRedirection());
        assertThat(posted("SALES")).isEqualTo(-3500);
        mvc.perform(get("/sales/" + sale + "/edit").with(owner()))
                .andExpect(content().string(containsString("value=\"5.00\"")));
    }

    @Test
    void aThingGivenAlongIsSoldForNothingAndCostsWhatItCost() throws Exception {
        mvc.perform(sale("2025-03-10").param("lines[1].codes", "P0002").param("lines[1].price", "0"))
                .andExpect(status().is3xxRedirection());
        assertThat(posted("SALES")).isEqualTo(-4000);
        assertThat(posted("COST_OF_PIECES")).isEqualTo(800);
    }

    @Test
    void aCodeIsEitherAPercentageOrAnAmountAndHasOneName() throws Exception {
        code("spring", "5", "", "2025-03-01", "")
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("code like that already")));
        code("BOTH", "5", "5", "2025-03-01", "")
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("either a percentage or an amount")));
        code("BACK", "5", "", "2025-03-01", "2025-02-01")
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("before the first")));
        assertThat(jdbc.sql("select code from discount_code")
                        .query(String.class)
                        .list())
                .isEqualTo(List.of("SPRING"));
    }

    private ResultActions code(String code, String percent, String amount, String from, String to) throws Exception {
        return mvc.perform(post("/discount-codes/new")
                .with(owner())
                .param("code", code)
                .param("percent", percent)
                .param("amount", amount)
                .param("validFrom", from)
                .param("validTo", to));
    }

    private MockHttpServletRequestBuilder sale(String day) {
        return post("/sales/new")
                .with(owner())
                .param("id", sale.toString())
                .param("date", day)
                .param("channel", trestle.stall.toString())
                .param("lines[0].codes", "P0001")
                .param("lines[0].price", "40");
    }

    private long posted(String account) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from posting where document_id = ? and account = ?")
                .params(sale, account)
                .query(Long.class)
                .single();
    }
}
