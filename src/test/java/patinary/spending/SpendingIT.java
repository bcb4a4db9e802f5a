package patinary.spending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Books;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.ShopTest;

/** The money documents that belong to no piece, from the form to the books. Names and amounts are invented. */
@ShopTest
class SpendingIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private Books books;

    @Autowired
    private JdbcClient jdbc;

    private final UUID cash = UUID.randomUUID();
    private final UUID bank = UUID.randomUUID();
    private final UUID document = UUID.randomUUID();

    @BeforeEach
    void moneyPlaces() {
        places.save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
        places.save(new MoneyPlace(bank, "Bank", MoneyPlace.Kind.BANK));
    }

    @ParameterizedTest
    @ValueSource(strings = {"expenses", "trips", "other-income", "owner-money", "money-moves", "sales-tax-paid"})
    void everyKindHasAFormThatTellsWhatIsMissing(String kind) throws Exception {
        mvc.perform(get("/" + kind + "/new").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(post("/" + kind + "/new").with(owner()).param("id", document.toString()))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Enter the day")));
    }

    @Test
    void anExpenseReachesTheBooksOnceAndCanBeChangedAndRemoved() throws Exception {
        send("/expenses/new", expense("12.50")).andExpect(redirectedUrl("/expenses"));
        send("/expenses/new", expense("12.50")).andExpect(redirectedUrl("/expenses"));
        assertThat(sum("EXPENSE")).isEqualTo(1250);
        assertThat(sum("MONEY")).isEqualTo(-1250);
        assertThat(books.find(Expense.class, document).orElseThrow().payee()).isEqualTo("Larch Hall");

        mvc.perform(get("/expenses/" + document).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"12.50\"")));
        send("/expenses/" + document, expense("15.25")).andExpect(redirectedUrl("/expenses"));
        assertThat(sum("EXPENSE")).isEqualTo(1525);

        mvc.perform(post("/expenses/" + document).with(owner()).params(typed(expense("9"))))
                .andExpect(status().isConflict());
        mvc.perform(post("/expenses/" + document + "/remove").with(owner())).andExpect(redirectedUrl("/expenses"));
        assertThat(sum("EXPENSE")).isZero();
    }

    @Test
    void anAmountThatReadsTwoWaysStaysAsTyped() throws Exception {
        send("/expenses/new", expense("1,234"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("value=\"1,234\"")))
                .andExpect(content().string(containsString("two ways")));
        send("/expenses/new", expense("0")).andExpect(content().string(containsString("above zero")));
    }

    /** The rate of 2025: IRS Notice 2025-5, 70 cents; 12.5 miles come to 8.75 (derived). */
    @Test
    void aTripTakesTheRateOfItsDay() throws Exception {
        send("/trips/new", trip("2025-03-08", "12.5", "")).andExpect(redirectedUrl("/trips"));
        assertThat(books.find(Trip.class, document).orElseThrow().rateTenths()).isEqualTo(700);
        assertThat(sum("VEHICLE")).isEqualTo(875);
        assertThat(sum("OWNER_IN")).isEqualTo(-875);
        mvc.perform(get("/trips/" + document).with(owner()))
                .andExpect(content().string(containsString("IRS Notice 2025-5")))
                .andExpect(content().string(containsString("$8.75")));
        send("/trips/" + document, trip("2025-03-08", "12.5", "0.655")).andExpect(redirectedUrl("/trips"));
        assertThat(sum("VEHICLE")).isEqualTo(819);
        assertThat(jdbc.sql("select amount_minor from money_document where id = ?")
                        .param(document)
                        .query(Long.class)
                        .single())
                .isEqualTo(819);
    }

    @Test
    void aTripWithoutAKnownRateAsksForOne() throws Exception {
        send("/trips/new", trip("2031-03-08", "12.5", ""))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("No rate is known")));
        send("/trips/new", trip("2031-03-08", "12.55", "0.7"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("one decimal")));
    }

    @Test
    void aTripThatAReceiptNamesStays() throws Exception {
        send("/trips/new", trip("2025-03-08", "4", "")).andExpect(redirectedUrl("/trips"));
        UUID receipt = UUID.randomUUID();
        jdbc.sql("insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version) "
                        + "values (?, 'RECEIPT', 1, ?, '', current_timestamp, 0)")
                .params(receipt, LocalDate.of(2025, 3, 8))
                .update();
        jdbc.sql("insert into receipt (id, trip_id, till_total_minor) values (?, ?, 0)")
                .params(receipt, document)
                .update();
        mvc.perform(post("/trips/" + document + "/remove").with(owner()))
                .andExpect(redirectedUrl("/trips/" + document))
                .andExpect(flash().attributeExists("notice"));
        assertThat(books.find(Trip.class, document)).isPresent();
    }

    @Test
    void moneyMovesBetweenPlacesAndBalancesFollow() throws Exception {
        send("/owner-money/new", Map.of("direction", "IN", "placeId", cash.toString(), "amount", "100"))
                .andExpect(redirectedUrl("/expenses"));
        send(
                        "/money-moves/new",
                        Map.of(
                                "id",
                                UUID.randomUUID().toString(),
                                "fromPlaceId",
                                cash.toString(),
                                "toPlaceId",
                                bank.toString(),
                                "amount",
                                "60"))
                .andExpect(redirectedUrl("/expenses"));
        mvc.perform(get("/expenses").with(owner()))
                .andExpect(content().string(containsString("$40.00")))
                .andExpect(content().string(containsString("Cash box → Bank")));
        send("/money-moves/new", Map.of("fromPlaceId", cash.toString(), "toPlaceId", cash.toString(), "amount", "1"))
                .andExpect(content().string(containsString("two different places")));
    }

    @Test
    void otherIncomeAndSalesTaxPaidReachTheirAccounts() throws Exception {
        send(
                        "/other-income/new",
                        Map.of(
                                "category",
                                "Lessons",
                                "payer",
                                "Maple Club",
                                "placeId",
                                bank.toString(),
                                "amount",
                                "80"))
                .andExpect(redirectedUrl("/expenses"));
        send(
                        "/sales-tax-paid/new",
                        Map.of(
                                "id",
                                UUID.randomUUID().toString(),
                                "period",
                                "Spring",
                                "placeId",
                                bank.toString(),
                                "amount",
                                "6.40"))
                .andExpect(redirectedUrl("/expenses"));
        assertThat(sum("OTHER_INCOME")).isEqualTo(-8000);
        assertThat(sum("SALES_TAX_DUE")).isEqualTo(640);
        assertThat(sum("MONEY")).isEqualTo(7360);
    }

    @Test
    void theListIsFilteredAndItsTotalsFollow() throws Exception {
        send("/expenses/new", expense("12.50")).andExpect(redirectedUrl("/expenses"));
        send(
                        "/other-income/new",
                        Map.of(
                                "id",
                                UUID.randomUUID().toString(),
                                "category",
                                "Lessons",
                                "placeId",
                                bank.toString(),
                                "amount",
                                "80"))
                .andExpect(redirectedUrl("/expenses"));
        mvc.perform(get("/expenses?q=LARCH&kind=expenses&category=booth_rent&year=2025")
                        .with(owner()))
                .andExpect(content().string(containsString("Larch Hall")))
                .andExpect(content().string(not(containsString("Nothing here"))))
                .andExpect(content().string(not(containsString("Lessons"))));
        mvc.perform(get("/expenses?year=2024").with(owner()))
                .andExpect(content().string(containsString("Nothing here")))
                .andExpect(content().string(not(containsString("Larch Hall"))));
        mvc.perform(get("/expenses?q=%25").with(owner()))
                .andExpect(content().string(not(containsString("Larch Hall"))));
    }

    @Test
    void moneyPlacesAreNamedOnce() throws Exception {
        mvc.perform(post("/money-places/new")
                        .with(owner())
                        .param("name", "bank")
                        .param("kind", "BANK"))
                .andExpect(status().isUnprocessableContent());
        mvc.perform(post("/money-places/new")
                        .with(owner())
                        .param("name", "Stall box")
                        .param("kind", "CASH"))
                .andExpect(redirectedUrl("/expenses"));
        MoneyPlace stored = places.findById(bank).orElseThrow();
        mvc.perform(post("/money-places/" + bank)
                        .with(owner())
                        .param("version", String.valueOf(stored.version()))
                        .param("name", "Brook Bank")
                        .param("kind", "BANK"))
                .andExpect(redirectedUrl("/expenses"));
        mvc.perform(get("/money-places/" + bank).with(owner()))
                .andExpect(content().string(containsString("Brook Bank")));
    }

    private Map<String, String> expense(String amount) {
        return Map.of("category", "booth_rent", "payee", "Larch Hall", "placeId", cash.toString(), "amount", amount);
    }

    private static Map<String, String> trip(String date, String miles, String rate) {
        return Map.of(
                "date",
                date,
                "startPlace",
                "Home",
                "destination",
                "Larch Hall",
                "purpose",
                "Looked for lamps",
                "miles",
                miles,
                "rate",
                rate);
    }

    private ResultActions send(String path, Map<String, String> answers) throws Exception {
        MockHttpServletRequestBuilder request = post(path).with(owner()).params(typed(answers));
        if (!path.endsWith("/new")) {
            long version = jdbc.sql("select version from document where id = ?")
                    .param(document)
                    .query(Long.class)
                    .single();
            request.param("version", String.valueOf(version));
        }
        return mvc.perform(request);
    }

    private org.springframework.util.MultiValueMap<String, String> typed(Map<String, String> answers) {
        var all = new org.springframework.util.LinkedMultiValueMap<String, String>();
        all.add("id", document.toString());
        all.add("date", "2025-03-08");
        answers.forEach(all::set);
        return all;
    }

    private long sum(String account) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from posting where account = ?")
                .param(account)
                .query(Long.class)
                .single();
    }
}
