package patinary.setaside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.money.Amount;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.ShopTest;

/** The estimate of what to set aside, from the books to the page. */
@ShopTest
class SetAsideIT {

    private static final String HERE = "/year/2025/set-aside";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private SetAside estimates;

    @Autowired
    private JdbcClient jdbc;

    private final UUID bank = UUID.randomUUID();

    /** The income of IRS Publication 505 (2001), example 4.7, as four lessons of the four periods of 2025. */
    @BeforeEach
    void thePublishedIncome() throws Exception {
        places.save(new MoneyPlace(bank, "Bank", MoneyPlace.Kind.BANK));
        income("2025-03-31", "5250");
        income("2025-05-31", "7775");
        income("2025-08-31", "8968");
        income("2025-12-31", "14434");
    }

    @Test
    void eachPaymentLooksAtTheIncomeUpToItsOwnDay() throws Exception {
        assertThat(estimates.year(2025))
                .extracting(Estimate::annualised)
                .containsExactly(
                        Amount.of(2_100_000), Amount.of(3_126_000), Amount.of(3_299_000), Amount.of(3_642_700));
        mvc.perform(get(HERE).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("$32,990<")))
                .andExpect(content().string(containsString("16 Jun 2025")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/year/2031/set-aside").with(owner()))
                .andExpect(content().string(containsString("No payments of 2031 are known")));
    }

    /** 10 and 4 percent: the hand-worked table of the handbook's page, 1,425 by the first payment. */
    @Test
    void herPercentagesAndWhatSheNotedAsPaid() throws Exception {
        send(HERE + "/percent", "version", -1, "income", "10 %", "state", "4").andExpect(redirectedUrl(HERE));
        long before = jdbc.sql("select count(*) from posting").query(Long.class).single();
        UUID payment = UUID.randomUUID();
        for (int i = 0; i < 2; i++) {
            send(HERE + "/paid", "id", payment, "date", "2025-04-15", "amount", "400")
                    .andExpect(redirectedUrl(HERE));
        }
        assertThat(estimates.year(2025).get(0).left()).isEqualTo(Amount.of(102_500));
        assertThat(jdbc.sql("select count(*) from posting").query(Long.class).single())
                .as("a note moves nothing in the books")
                .isEqualTo(before);
        mvc.perform(get("/year/2026/set-aside/percent").with(owner()))
                .andExpect(content().string(containsString("value=\"10\"")));
        send(HERE + "/percent", "version", -1, "income", "11").andExpect(status().isConflict());
        send(HERE + "/paid/" + payment + "/remove").andExpect(redirectedUrl(HERE));
        assertThat(estimates.year(2025).get(0).left()).isEqualTo(Amount.of(142_500));
    }

    @Test
    void theHomeIsSpreadOverItsMonths() throws Exception {
        send("/year/2025/home", "version", -1, "feet", "120", "months", "12");
        assertThat(estimates.year(2025).get(0).profit()).isEqualTo(Amount.of(525_000 - 15_000));
        assertThat(estimates.year(2025).get(3).profit()).isEqualTo(Amount.of(3_642_700 - 60_000));
    }

    @Test
    void whatCannotBeStaysAsTyped() throws Exception {
        send(HERE + "/percent", "version", -1, "income", "104", "state", "x")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("value=\"104\"")));
        send(HERE + "/paid", "id", UUID.randomUUID(), "date", "2025-04-15", "amount", "0")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("above zero")));
        assertThat(estimates.year(2025).get(0).paid()).isEqualTo(Amount.ZERO);
    }

    private void income(String date, String amount) throws Exception {
        send(
                        "/other-income/new",
                        "id",
                        UUID.randomUUID(),
                        "date",
                        date,
                        "category",
                        "Lessons",
                        "placeId",
                        bank,
                        "amount",
                        amount)
                .andExpect(redirectedUrl("/expenses"));
    }

    private ResultActions send(String path, Object... fields) throws Exception {
        MockHttpServletRequestBuilder request = post(path).with(owner());
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i].toString(), fields[i + 1].toString());
        }
        return mvc.perform(request);
    }
}
