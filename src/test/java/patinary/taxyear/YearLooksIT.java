package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.homeuse.HomeUses;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.ShopTest;

/** A year in whole units, beside the year before, and with a part of a home. All amounts are invented. */
@ShopTest
class YearLooksIT {

    private static final Pattern HEADING = Pattern.compile("<h2[^>]*>([^<]*)</h2>");

    @Autowired
    private MockMvc mvc;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private HomeUses homes;

    private final UUID bank = UUID.randomUUID();

    @BeforeEach
    void aLittleIncome() throws Exception {
        places.save(new MoneyPlace(bank, "Bank", MoneyPlace.Kind.BANK));
        income("2025-05-02", "399.50");
        income("2026-01-02", "612.49");
    }

    @Test
    void theLinesStandInWholeUnitsAndBesideTheYearBefore() throws Exception {
        mvc.perform(get("/year/2026").with(owner()))
                .andExpect(content().string(not(containsString("$612<"))))
                .andExpect(content().string(containsString("$612.49")));
        mvc.perform(get("/year/2026?whole=true&beside=true").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("$612<")))
                .andExpect(content().string(containsString("$399.50")))
                .andExpect(content().string(containsString("$212.99")))
                .andExpect(content().string(not(containsString("??"))));
    }

    @Test
    void everyHeadingLeadsToItsPlaceInTheHandbook() throws Exception {
        for (String page : List.of("/year/2025", "/year/2026")) {
            String text = mvc.perform(get(page).with(owner()))
                    .andReturn()
                    .getResponse()
                    .getContentAsString();
            List<String> headings = HEADING.matcher(text.substring(text.indexOf("<main")))
                    .results()
                    .map(heading -> heading.group(1))
                    .toList();
            assertThat(headings).hasSizeGreaterThan(5).contains("Income", "Vehicle", "Files for the accountant");
            assertThat(headings)
                    .allSatisfy(heading -> assertThat(text)
                            .containsPattern("<h2[^>]*>" + Pattern.quote(heading)
                                    + "</h2>\\s*<p class=\"handbook-way\"><a class=\"touch\" href=\"/handbook/[^\"]+\">In the handbook: "
                                    + Pattern.quote(heading) + "</a></p>"));
        }
    }

    /** 140 square feet at 5 dollars are 700, but the profit is 612.49: Revenue Procedure 2013-13 (read). */
    @Test
    void theHomeGoesOnItsLineAndOffAgain() throws Exception {
        send("/year/2026/home", "version", -1, "feet", "140", "months", "12")
                .andExpect(redirectedUrl("/year/2026/home"));
        mvc.perform(get("/year/2026/home").with(owner()))
                .andExpect(content().string(containsString("$700.00")))
                .andExpect(content().string(containsString("$612.49")))
                .andExpect(content().string(containsString("does not allow all of it")));
        send("/year/2026/home", "version", -1, "feet", "100", "months", "12").andExpect(status().isConflict());
        send("/year/2026/home", "version", 0, "feet", "100", "months", "6");
        mvc.perform(get("/year/2026").with(owner())).andExpect(content().string(containsString("$362.49")));
        send("/year/2026/home/remove").andExpect(redirectedUrl("/year/2026"));
        assertThat(homes.of(2026)).isEmpty();
        mvc.perform(get("/year/2012/home").with(owner()))
                .andExpect(content().string(containsString("no simplified way for 2012")));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 12, square feet",
        "x, 12, square feet",
        "1.234, 12, square feet",
        "140, 13, from 1 to 12",
        "140, , from 1 to 12"
    })
    void whatCannotBeStaysAsTyped(String feet, String months, String said) throws Exception {
        send("/year/2026/home", "version", -1, "feet", feet, "months", months == null ? "" : months)
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString(said)))
                .andExpect(content().string(containsString("value=\"" + feet + "\"")));
        assertThat(homes.said(2026)).isEmpty();
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
