package patinary.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Books;
import patinary.measure.Dimension;
import patinary.pieces.LettingGo;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Starting with stock on the shelf, half-used jars, money and debts. */
@ShopTest
class OpeningIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private SupplyLines supplyLines;

    @Autowired
    private Supplies supplies;

    @Autowired
    private FirstSteps steps;

    @Autowired
    private JdbcClient jdbc;

    private final UUID cash = UUID.randomUUID();
    private final UUID paint = UUID.randomUUID();

    @BeforeEach
    void stockTheShop() {
        places.save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
        UUID line = UUID.randomUUID();
        supplyLines.save(new SupplyLine(line, "Chalk paints", "an invented maker"));
        supplies.save(new Supply(
                paint,
                new Supply.Facts(
                        line,
                        "Pond green",
                        Dimension.VOLUME,
                        null,
                        null,
                        List.of(new Supply.Named("jar", BigDecimal.valueOf(240))),
                        List.of())));
    }

    /** Pieces 12.00 + 0 unknown; half a jar at 6.00; cash 50.00; 20.00 owed to her; tax due 3.00. Opening 85.00. */
    @Test
    void everythingThereOnTheFirstDayHasAPlaceInTheBooks() throws Exception {
        mvc.perform(as(full("-1"))).andExpect(status().isSeeOther());

        assertThat(balances())
                .containsEntry("PIECES", 1200L)
                .containsEntry("BENCH", 600L)
                .containsEntry("MONEY", 5000L)
                .containsEntry("RECEIVABLE", 2000L)
                .containsEntry("SALES_TAX_DUE", -300L)
                .containsEntry("OPENING", -8500L);
        assertThat(jdbc.sql("select quantity from stock_left where supply_id = ?")
                        .param(paint)
                        .query(BigDecimal.class)
                        .single())
                .isEqualByComparingTo("120");
        assertThat(jdbc.sql("select doc_date from document")
                        .query(LocalDate.class)
                        .single())
                .isEqualTo(InventedShop.FIRST_DAY);
        assertThat(jdbc.sql("select code from piece order by code")
                        .query(String.class)
                        .list())
                .containsExactly("P0001", "SH-9");
        mvc.perform(as(get("/opening")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("SH-9 Oak box")))
                .andExpect(content().string(containsString("value=\"120 ml\"")))
                // 18.00 here against 20.00 in last year's records
                .andExpect(content().string(containsString("−$2.00")))
                .andExpect(content().string(containsString("41250.3")));
    }

    @Test
    void savingAgainChangesTheOneOpeningAndTakesAPieceOut() throws Exception {
        mvc.perform(as(full("-1"))).andExpect(status().isSeeOther());
        UUID box = piece("Oak box");

        mvc.perform(as(post("/opening")
                        .param("version", version())
                        .param("pieces[0].pieceId", box.toString())
                        .param("pieces[0].cost", "15.00")))
                .andExpect(status().isSeeOther());

        assertThat(balances()).containsEntry("PIECES", 1500L).containsEntry("OPENING", -1500L);
        assertThat(jdbc.sql("select title from piece").query(String.class).list())
                .containsExactly("Oak box");
        assertThat(jdbc.sql("select count(*) from opening").query(Long.class).single())
                .isEqualTo(1);
    }

    @Test
    void aPieceThatWasWorkedWithSinceStays() throws Exception {
        mvc.perform(as(full("-1"))).andExpect(status().isSeeOther());
        books.record(new LettingGo(
                UUID.randomUUID(), LocalDate.of(2025, 2, 1), "", piece("Tin tray"), LettingGo.Reason.KEPT));

        mvc.perform(as(post("/opening")
                        .param("version", version())
                        .param("pieces[0].pieceId", piece("Oak box").toString())
                        .param("pieces[0].cost", "15.00")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("It has to stay")));
        assertThat(balances()).containsEntry("MONEY", 5000L);
    }

    @Test
    void aWindowThatIsOutOfDateDoesNotSaveOverANewerOne() throws Exception {
        mvc.perform(as(full("-1"))).andExpect(status().isSeeOther());
        mvc.perform(as(full("-1")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Another piece has the code SH-9")));
        mvc.perform(as(post("/opening").param("version", "-1"))).andExpect(status().isConflict());
    }

    @Test
    void theButtonsForMoreRowsStoreNothingAndKeepWhatWasTyped() throws Exception {
        mvc.perform(as(post("/opening").param("pieces[0].title", "Half typed").param("action", "add-piece")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"Half typed\"")))
                .andExpect(content().string(containsString("pieces[1].title")));
        mvc.perform(as(post("/opening").param("pieces[0].title", "Half typed").param("action", "remove-piece:0")))
                .andExpect(status().isOk());
        assertThat(jdbc.sql("select count(*) from document").query(Long.class).single())
                .isZero();
    }

    @Test
    void whatCannotBeReadIsSaidBesideItsField() throws Exception {
        mvc.perform(as(post("/opening")
                        .param("pieces[0].title", "Stool")
                        .param("supplies[0].supplyId", paint.toString())
                        .param("supplies[0].quantity", "half of it")
                        .param("supplies[0].cost", "")
                        .param("owed[0].account", "STORE_CREDIT_HELD")
                        .param("owed[0].amount", "5")
                        .param("odometer", "far")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("pieces0.cost-error")))
                .andExpect(content().string(containsString("supplies0.quantity-error")))
                .andExpect(content().string(containsString("supplies0.cost-error")))
                .andExpect(content().string(containsString("owed0.partyId-error")))
                .andExpect(content().string(containsString("odometer-error")));
        assertThat(jdbc.sql("select count(*) from piece").query(Long.class).single())
                .isZero();
    }

    @Test
    void theFirstStepsSayWhatIsThere() throws Exception {
        assertThat(steps.look().opening()).isFalse();
        assertThat(steps.look().supply()).isTrue();
        mvc.perform(as(full("-1"))).andExpect(status().isSeeOther());
        assertThat(steps.look().opening()).isTrue();
        assertThat(steps.look().piece()).isTrue();
        assertThat(steps.look().sale()).isFalse();
    }

    @Test
    void whatBuyersOwedOnTheFirstDayCanBePaid() throws Exception {
        mvc.perform(as(get("/payments/opening"))).andExpect(status().isNotFound());
        mvc.perform(as(full("-1"))).andExpect(status().isSeeOther());
        mvc.perform(as(get("/payments")))
                .andExpect(content().string(containsString("Since the first day")))
                .andExpect(content().string(containsString("href=\"/payments/opening\"")));
        mvc.perform(as(get("/payments/opening")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("$20.00")));

        mvc.perform(as(payment("20.01")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("amount-error")));
        mvc.perform(as(payment("5.00"))).andExpect(status().isSeeOther());
        assertThat(owed()).containsExactly(1500L);
        assertThat(jdbc.sql("select link from bench_and_shelf where list = 'owed-to'")
                        .query(String.class)
                        .list())
                .containsExactly("/payments/opening");
        mvc.perform(as(payment("15.00"))).andExpect(status().isSeeOther());

        assertThat(owed()).isEmpty();
        assertThat(balances()).containsEntry("MONEY", 7000L).containsEntry("RECEIVABLE", 0L);
        mvc.perform(as(get("/payments"))).andExpect(status().isOk());
    }

    private MockHttpServletRequestBuilder payment(String amount) {
        return post("/payments/opening")
                .param("id", UUID.randomUUID().toString())
                .param("date", "2025-02-03")
                .param("place", cash.toString())
                .param("amount", amount);
    }

    private List<Long> owed() {
        return jdbc.sql("select amount_minor from owed_to_shop")
                .query(Long.class)
                .list();
    }

    private MockHttpServletRequestBuilder full(String version) {
        return post("/opening")
                .param("version", version)
                .param("pieces[0].title", "Oak box")
                .param("pieces[0].code", "SH-9")
                .param("pieces[0].cost", "12.00")
                .param("pieces[1].title", "Tin tray")
                .param("pieces[1].unknown", "true")
                .param("supplies[0].supplyId", paint.toString())
                .param("supplies[0].place", "BENCH")
                .param("supplies[0].quantity", "1/2 jar")
                .param("supplies[0].cost", "6.00")
                .param("money[0].placeId", cash.toString())
                .param("money[0].amount", "50.00")
                .param("owed[0].account", "RECEIVABLE")
                .param("owed[0].title", "An invented buyer")
                .param("owed[0].amount", "20.00")
                .param("owed[1].account", "SALES_TAX_DUE")
                .param("owed[1].amount", "3.00")
                .param("odometer", "41250.3")
                .param("lastClosing", "20.00");
    }

    private UUID piece(String title) {
        return jdbc.sql("select id from piece where title = ?")
                .param(title)
                .query(UUID.class)
                .single();
    }

    private String version() {
        return jdbc.sql("select d.version from document d join opening o on o.id = d.id")
                .query(String.class)
                .list()
                .get(0);
    }

    private Map<String, Long> balances() {
        Map<String, Long> result = new TreeMap<>();
        jdbc.sql("select account, sum(amount_minor) as balance from posting group by account")
                .query(row -> {
                    result.put(row.getString("account"), row.getLong("balance"));
                });
        return result;
    }

    private static MockHttpServletRequestBuilder as(MockHttpServletRequestBuilder request) {
        return request.with(InventedShop.owner());
    }
}
