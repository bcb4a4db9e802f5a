package patinary.salestax;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

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
import patinary.money.Percent;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;

/** Sales tax by place, from the form of a sale to the report. Places, pieces and stall are invented. */
@ShopTest
class SalesTaxIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TaxPlaces places;

    @Autowired
    private TaxReports reports;

    private final UUID county = UUID.randomUUID();
    private Trestle trestle;

    @BeforeEach
    void stock() {
        trestle = new Trestle(program);
        places.add(county, "Fallow County", new TaxRule(Trestle.DAY, Percent.of("6"), true));
        places.addRate(county, new TaxRule(Trestle.DAY.plusMonths(3), Percent.of("6.25"), false));
    }

    @Test
    void aPlaceIsKeptWithItsDatedRates() throws Exception {
        say(post("/tax-places/new")
                        .param("name", "Heron City")
                        .param("percent", "1.5")
                        .param("validFrom", "2025-03-01"))
                .andExpect(redirectedUrl("/tax-places"));
        UUID city = places.all().stream()
                .filter(place -> place.name().equals("Heron City"))
                .findFirst()
                .orElseThrow()
                .id();
        say(post("/tax-places/" + city + "/rates").param("percent", "2").param("validFrom", "2025-03-01"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("A rate begins on this day already")));
        say(post("/tax-places/" + city + "/rates").param("percent", "2").param("validFrom", "2025-07-01"))
                .andExpect(status().is3xxRedirection());
        assertThat(places.find(city).orElseThrow().ruleOn(LocalDate.of(2025, 6, 30)))
                .contains(new TaxRule(
                        LocalDate.of(2025, 3, 1),
                        new Percent(Percent.of("1.5").value().setScale(4)),
                        false));
        say(post("/tax-places/new")
                        .param("name", "heron city")
                        .param("percent", "x")
                        .param("validFrom", ""))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("There is a place of this name already")));
        say(post("/tax-places/" + city + "/remove")).andExpect(status().is3xxRedirection());
        assertThat(places.find(city)).isEmpty();
        mvc.perform(get("/tax-places").with(owner()))
                .andExpect(content().string(containsString("Fallow County")))
                .andExpect(content().string(not(containsString("??"))));
    }

    @Test
    void thePlaceProposesTheTaxOfTheDayAndSheMayTypeAnother() throws Exception {
        UUID tray = trestle.piece("Tin tray", "Box 1");
        MockHttpServletRequestBuilder typed = sale(tray, "2025-03-20", "50.00").param("shipping", "6.00");
        say(typed.param("taxPlace", county.toString()).param("act", "sums"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"3.36\"")));
        say(sale(tray, "2025-06-20", "50.00")
                        .param("shipping", "6.00")
                        .param("taxPlace", county.toString())
                        .param("act", "sums"))
                .andExpect(content().string(containsString("value=\"3.13\"")));
        assertThat(jdbc.sql("select count(*) from sale").query(Long.class).single())
                .isZero();

        UUID sale = saved(
                sale(tray, "2025-03-20", "50.00").param("shipping", "6.00").param("taxPlace", county.toString()));
        assertThat(tax(sale)).isEqualTo(336);
        places.addRate(county, new TaxRule(LocalDate.of(2025, 3, 15), Percent.of("9"), true));
        assertThat(tax(sale)).as("a later row changes no sale").isEqualTo(336);
        assertThat(places.removeRate(county, LocalDate.of(2025, 3, 15)))
                .as("a sale was taxed since")
                .isFalse();
        mvc.perform(get("/sales/" + sale).with(owner())).andExpect(content().string(containsString("Fallow County")));
        mvc.perform(get("/sales/" + sale + "/edit").with(owner()))
                .andExpect(content().string(containsString("value=\"3.36\"")));

        UUID free = saved(sale(trestle.piece("Gift", "Box 1"), "2025-03-21", "10.00")
                .param("taxPlace", county.toString())
                .param("tax", "0"));
        assertThat(tax(free)).isZero();
    }

    @Test
    void aChannelHasItsUsualPlaceAndOneThatPassesTheTaxOnProposesNone() throws Exception {
        say(post("/tax-places/usual/" + trestle.stall).param("place", county.toString()))
                .andExpect(status().is3xxRedirection());
        UUID usual = saved(sale(trestle.piece("Tin tray", "Box 1"), "2025-03-20", "10.00"));
        assertThat(tax(usual)).isEqualTo(60);
        UUID none =
                saved(sale(trestle.piece("Jug", "Box 1"), "2025-03-20", "10.00").param("taxPlace", "NONE"));
        assertThat(tax(none)).isZero();
        UUID passed = saved(
                sale(trestle.piece("Crate", "Box 1"), "2025-03-20", "10.00").param("taxBy", "CHANNEL"));
        assertThat(tax(passed)).isZero();
        say(sale(trestle.piece("Bowl", "Box 1"), "2025-03-20", "10.00")
                        .param("taxPlace", UUID.randomUUID().toString()))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("Choose one of your places")));
    }

    @Test
    void theReportAgreesWithTheAccountThroughRefundsAndPayments() throws Exception {
        UUID tray = trestle.piece("Tin tray", "Box 1");
        UUID sale = saved(sale(tray, "2025-03-20", "50.00")
                .param("shipping", "6.00")
                .param("buyer", "Ash")
                .param("taxPlace", county.toString()));
        saved(sale(trestle.piece("Jug", "Box 1"), "2025-04-02", "20.00").param("taxPlace", county.toString()));
        saved(sale(trestle.piece("Crate", "Box 1"), "2025-03-21", "30.00").param("tax", "2.10"));
        saved(sale(trestle.piece("Bowl", "Box 1"), "2025-03-22", "30.00")
                .param("tax", "1.80")
                .param("taxBy", "CHANNEL"));
        say(post("/sales/" + sale + "/refund")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-25")
                        .param("way", "PLACE")
                        .param("place", trestle.cash.toString())
                        .param("tax", "0.60")
                        .param("lines[0].thing", tray.toString())
                        .param("lines[0].amount", "10.00"))
                .andExpect(status().is3xxRedirection());
        Period march = Period.of(2025, "m3").orElseThrow();
        TaxReport report = reports.of(march);
        TaxLine none = report.lines().get(0);
        TaxLine line = report.lines().get(1);
        assertThat(List.of(none.passed(), none.taxed(), none.owed(), none.passedTax()))
                .containsExactly(Amount.of(3000), Amount.of(3000), Amount.of(210), Amount.of(180));
        assertThat(List.of(line.taxed(), line.taxedBack(), line.charged(), line.givenBack(), line.owed()))
                .containsExactly(Amount.of(5600), Amount.of(1000), Amount.of(336), Amount.of(60), Amount.of(276));
        assertThat(report.total().after())
                .isEqualTo(reports.account(march.last()))
                .isEqualTo(Amount.of(486));

        say(post("/sales-tax-paid/new")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-04-20")
                        .param("placeId", trestle.cash.toString())
                        .param("taxPlace", county.toString())
                        .param("from", "2025-03-01")
                        .param("to", "2025-03-31")
                        .param("amount", "2.70")
                        .param("allowance", "0.06"))
                .andExpect(status().is3xxRedirection());
        assertThat(reports.of(march).lines().get(1).open()).isEqualTo(Amount.ZERO);
        Period april = march.next();
        assertThat(reports.of(april).total().after()).isEqualTo(reports.account(april.last()));
        assertThat(reports.of(april).lines().get(1).after()).isEqualTo(Amount.of(120));
        assertThat(jdbc.sql("select -sum(amount_minor) from posting where account = 'OTHER_INCOME'")
                        .query(Long.class)
                        .single())
                .isEqualTo(6);
        pages(sale);
    }

    private void pages(UUID sale) throws Exception {
        String march = "?year=2025&part=m3";
        say(post("/sales-tax/" + county + "/filed").param("year", "2025").param("part", "m3"))
                .andExpect(redirectedUrl("/sales-tax" + march));
        mvc.perform(get("/sales-tax" + march).with(owner()))
                .andExpect(content().string(containsString("return sent in")))
                .andExpect(content().string(containsString(">paid<")))
                .andExpect(content().string(not(containsString("??"))));
        say(post("/sales-tax/" + county + "/not-filed").param("year", "2025").param("part", "m3"));
        assertThat(reports.filed(Period.of(2025, "m3").orElseThrow())).isEmpty();
        mvc.perform(get("/sales-tax/" + county + march).with(owner()))
                .andExpect(content().string(containsString("/sales/" + sale)))
                .andExpect(content().string(containsString("Refund Ash")));
        mvc.perform(get("/sales-tax/" + new UUID(0, 0) + march).with(owner()))
                .andExpect(content().string(containsString("No place")));
        mvc.perform(get("/sales-tax/" + UUID.randomUUID()).with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/sales-tax/file.csv" + march).with(owner()))
                .andExpect(
                        content()
                                .string(
                                        containsString(
                                                "Fallow County,2025-03-01,2025-03-31,56.00,0.00,0.00,56.00,10.00,0.00,46.00,3.36,0.60,2.76")));
        mvc.perform(get("/sales-tax-paid/new?taxPlace=" + county + "&from=2025-03-01&to=2025-03-31&amount=2.76")
                        .with(owner()))
                .andExpect(content().string(containsString("value=\"2025-03-31\"")));
        say(post("/sales-tax-paid/new")
                        .param("date", "2025-04-20")
                        .param("amount", "1")
                        .param("from", "2025-03-01"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("Type both days, or none")));
    }

    private MockHttpServletRequestBuilder sale(UUID piece, String date, String price) {
        String code = jdbc.sql("select code from piece where id = ?")
                .param(piece)
                .query(String.class)
                .single();
        return post("/sales/new")
                .param("id", UUID.randomUUID().toString())
                .param("date", date)
                .param("channel", trestle.stall.toString())
                .param("lines[0].title", "Thing")
                .param("lines[0].codes", code)
                .param("lines[0].price", price);
    }

    private UUID saved(MockHttpServletRequestBuilder sale) throws Exception {
        String to = String.valueOf(say(sale.param("act", "save"))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl());
        return UUID.fromString(to.substring("/sales/".length()));
    }

    private long tax(UUID sale) {
        return jdbc.sql("select tax_minor from sale where id = ?")
                .param(sale)
                .query(Long.class)
                .single();
    }

    private ResultActions say(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(owner()));
    }
}
