package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.taxbasis.TaxYears;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What goes on which line, changed year by year; and a table whose year begins in April. Everything is invented. */
@ShopTest
class LinesIT {

    private static final String UK = "uk-self-employment-short";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationContext program;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Years years;

    @Autowired
    private TaxYears taxYears;

    @Autowired
    private Seals seals;

    private final UUID cash = UUID.randomUUID();

    @BeforeEach
    void open() {
        program.getBean(MoneyPlaces.class).save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
    }

    @Test
    void aChangeHoldsForItsYearOrFromItOn() throws Exception {
        spend("2025-03-01", "software", "12");
        spend("2026-03-01", "software", "20");
        put(2025, "EXPENSE", "software", "other_expenses", "one").andExpect(redirectedUrl("/year/2025/lines"));
        assertThat(line(2025, "other_expenses")).isEqualTo(usd(1200));
        assertThat(line(2026, "office")).isEqualTo(usd(2000));
        put(2025, "EXPENSE", "software", "other_expenses", "onward");
        assertThat(line(2026, "other_expenses")).isEqualTo(usd(2000));
        read("/year/2026/line/other_expenses").andExpect(content().string(containsString("$20.00")));
        read("/year/2026/lines").andExpect(content().string(containsString("changed")));
        mvc.perform(post("/year/2025/lines/back")
                        .with(InventedShop.owner())
                        .param("account", "EXPENSE")
                        .param("category", "software"))
                .andExpect(redirectedUrl("/year/2025/lines"));
        assertThat(line(2025, "office")).isEqualTo(usd(1200));
        assertThat(line(2026, "office")).isEqualTo(usd(2000));
    }

    @Test
    void whatIsOnNoLineIsShownWithTheWayToALine() throws Exception {
        spend("2025-03-01", "meals", "12");
        put(2025, "EXPENSE", "meals", "NOWHERE", "one");
        assertThat(years.page(2025).unmapped()).hasSize(1);
        assertThat(years.page(2025).profit()).isEqualTo(usd(-1200));
        assertThat(line(2025, "net_profit")).isEqualTo(Amount.ZERO);
        read("/year/2025")
                .andExpect(
                        content().string(containsString("/year/2025/lines/change?account=EXPENSE&amp;category=meals")));
        read("/year/2025/lines/change?account=EXPENSE&category=meals")
                .andExpect(content().string(containsString("24b – Deductible meals")));
        mvc.perform(post("/year/2025/lines/supplied").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/year/2025/lines"));
        assertThat(line(2025, "meals")).isEqualTo(usd(1200));
    }

    @Test
    void refusesWhatCannotBe() throws Exception {
        spend("2025-03-01", "meals", "12");
        put(2025, "EXPENSE", "meals", "net_profit", "one")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Choose a line")));
        put(2025, "EXPENSE", "meals", "office", "")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("which years")));
        put(2025, "COST_OF_PIECES", "", "office", "one").andExpect(status().isNotFound());
        mvc.perform(post("/year/2025/lines/change")
                        .with(user("Kim").roles("HELPER"))
                        .with(csrf())
                        .param("account", "EXPENSE")
                        .param("category", "meals")
                        .param("line", "office")
                        .param("years", "one"))
                .andExpect(forwardedUrl("/refused"));
        seals.seal(2025, "");
        put(2025, "EXPENSE", "meals", "office", "one").andExpect(status().is(422));
        mvc.perform(post("/year/2025/lines/supplied").with(InventedShop.owner()));
        assertThat(line(2025, "meals")).isEqualTo(usd(1200));
        settings("plain").andExpect(status().is(422)).andExpect(content().string(containsString("year is sealed")));
    }

    /** GOV.UK: the tax year runs from 6 April to 5 April; page, lines, files and seal follow it. */
    @Test
    void aYearFromAprilToApril() throws Exception {
        settings(UK).andExpect(status().is3xxRedirection());
        spend("2025-04-05", "software", "1");
        spend("2025-04-06", "software", "10");
        spend("2026-04-05", "repairs", "20");
        spend("2026-04-06", "repairs", "40");
        assertThat(years.page(2025).profit()).isEqualTo(usd(-3000));
        assertThat(line(2025, "office")).isEqualTo(usd(1000));
        assertThat(line(2025, "repairs")).isEqualTo(usd(2000));
        assertThat(line(2025, "total_expenses")).isEqualTo(usd(3000));
        assertThat(line(2024, "office")).isEqualTo(usd(100));
        assertThat(line(2026, "repairs")).isEqualTo(usd(4000));
        read("/year/2025")
                .andExpect(content().string(containsString("6 Apr 2025")))
                .andExpect(content().string(containsString("5 Apr 2026")))
                .andExpect(content().string(containsString("Turnover")))
                .andExpect(content().string(containsString("check against the current form")));
        mvc.perform(get("/year").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/year/"
                        + taxYears.of(program.getBean(CurrentShop.class).today())));
        read("/year/2025/basis").andExpect(content().string(containsString("2025")));

        seals.seal(2025, "");
        assertThat(jdbc.sql("select d.doc_date from year_seal s join document d on d.id = s.id")
                        .query(LocalDate.class)
                        .single())
                .isEqualTo("2026-04-05");
        expense("2026-04-05", "repairs", "5").andExpect(status().is(422));
        spend("2026-04-06", "repairs", "5");
        assertThat(seals.of(2025).orElseThrow().holds()).isTrue();
    }

    private Amount line(int year, String meaning) {
        return years.page(year).parts().stream()
                .flatMap(part -> part.lines().stream())
                .filter(line -> line.line().meaning().equals(meaning))
                .findFirst()
                .flatMap(line -> Optional.ofNullable(line.amount()))
                .orElse(Amount.ZERO);
    }

    private ResultActions put(int year, String account, String category, String line, String which) throws Exception {
        return mvc.perform(post("/year/" + year + "/lines/change")
                .with(InventedShop.owner())
                .param("account", account)
                .param("category", category)
                .param("line", line)
                .param("years", which));
    }

    private ResultActions settings(String table) throws Exception {
        return mvc.perform(post("/shop")
                .with(InventedShop.owner())
                .param("version", "0")
                .param("shopName", "Linden Lane Bench")
                .param("taxTable", table)
                .param("hourlyRate", "18")
                .param("costingMethod", "FIFO")
                .param("timeZone", "Europe/London")
                .param("language", "en")
                .param("country", "GB"));
    }

    private void spend(String day, String category, String amount) throws Exception {
        expense(day, category, amount).andExpect(redirectedUrl("/expenses"));
    }

    private ResultActions expense(String day, String category, String amount) throws Exception {
        return mvc.perform(post("/expenses/new")
                .with(InventedShop.owner())
                .param("id", UUID.randomUUID().toString())
                .param("date", day)
                .param("category", category)
                .param("placeId", cash.toString())
                .param("amount", amount));
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("??"))));
    }

    private static Amount usd(long cents) {
        return Amount.of(cents);
    }
}
