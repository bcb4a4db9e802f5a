package patinary.grounds;

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
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.money.Amount;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.ShopTest;

/** What a year rests on, from invented documents to the pages. */
@ShopTest
class GroundsIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private GroundBook book;

    @Autowired
    private JdbcClient jdbc;

    private final UUID bank = UUID.randomUUID();
    private final UUID rent = UUID.randomUUID();
    private final UUID stamps = UUID.randomUUID();

    @BeforeEach
    void twoExpenses() throws Exception {
        places.save(new MoneyPlace(bank, "Bank", MoneyPlace.Kind.BANK));
        expense(rent, "90", "Larch Hall");
        expense(stamps, "12.50", "");
    }

    @Test
    void papersAndPayeesThatAreMissing() throws Exception {
        assertThat(book.total(Ground.NO_PAPER, 2025, Amount.ZERO))
                .isEqualTo(new GroundBook.Total(Ground.NO_PAPER, 2, 10_250));
        assertThat(book.total(Ground.NO_PAPER, 2025, Amount.of(7_500)).documents())
                .isEqualTo(1);
        assertThat(book.total(Ground.NO_PAYEE, 2025, Amount.ZERO))
                .isEqualTo(new GroundBook.Total(Ground.NO_PAYEE, 1, 1_250));
        jdbc.sql(
                        "insert into photo (id, document_id, stage, sort_order, width, height, bytes, sha256, added_at, added_by,"
                                + " version) values (?, ?, 'RECEIPT', 0, 1, 1, 1, 'x', current_timestamp, 'Owner', 0)")
                .params(UUID.randomUUID(), rent)
                .update();
        assertThat(book.total(Ground.NO_PAPER, 2025, Amount.ZERO).amountMinor()).isEqualTo(1_250);
        assertThat(book.total(Ground.NO_PAPER, 2026, Amount.ZERO).documents()).isZero();
    }

    /** 4.00 is marked as about, 6.00 not; of two uses by eye, 1.00 before a count and 2.50 after it, only the second is open. */
    @Test
    void aboutAndByEyeAreSumsOfPostings() {
        UUID supply = UUID.randomUUID();
        supply(supply);
        UUID receipt = document("RECEIPT", "2025-02-01");
        jdbc.sql("insert into receipt (id, till_total_minor) values (?, 1000)")
                .param(receipt)
                .update();
        posting(receipt, 1, "2025-02-01", "PIECES", null, true, 400);
        posting(receipt, 2, "2025-02-01", "PIECES", null, false, 600);
        posting(receipt, 3, "2025-02-01", "MONEY", null, false, -1000);
        UUID before = document("BENCH_ENTRY", "2025-03-01");
        posting(before, 1, "2025-03-01", "BENCH", supply, true, -100);
        UUID count = document("COUNT", "2025-03-02");
        jdbc.sql("insert into supply_count (id, supply_id, place, quantity) values (?, ?, 'BENCH', 1)")
                .params(count, supply)
                .update();
        UUID after = document("BENCH_ENTRY", "2025-03-03");
        posting(after, 1, "2025-03-03", "BENCH", supply, true, -250);
        assertThat(book.total(Ground.ABOUT, 2025, Amount.ZERO)).isEqualTo(new GroundBook.Total(Ground.ABOUT, 1, 400));
        assertThat(book.total(Ground.BY_EYE, 2025, Amount.ZERO)).isEqualTo(new GroundBook.Total(Ground.BY_EYE, 1, 250));
    }

    @Test
    void thePagesListThemAndLeadToThem() throws Exception {
        mvc.perform(get("/year/2025/rests-on").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("$102.50")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/year/2025/rests-on/no-paper?over=75").with(owner()))
                .andExpect(content().string(containsString("/expenses/" + rent)))
                .andExpect(content().string(not(containsString("/expenses/" + stamps))));
        mvc.perform(get("/year/2025/rests-on/no-paper?over=much").with(owner()))
                .andExpect(content().string(containsString("value=\"much\"")))
                .andExpect(content().string(containsString("Nothing is left out meanwhile")));
        mvc.perform(get("/year/2025/rests-on/by-eye").with(owner()))
                .andExpect(content().string(containsString("Nothing of 2025 is left here")));
        mvc.perform(get("/year/2025/rests-on/nothing").with(owner())).andExpect(status().isNotFound());
    }

    private void expense(UUID id, String amount, String payee) throws Exception {
        mvc.perform(post("/expenses/new")
                        .with(owner())
                        .param("id", id.toString())
                        .param("date", "2025-04-01")
                        .param("category", "office")
                        .param("payee", payee)
                        .param("placeId", bank.toString())
                        .param("amount", amount))
                .andExpect(redirectedUrl("/expenses"));
    }

    private void supply(UUID id) {
        UUID line = UUID.randomUUID();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Chalk paints', 'invented', 0)")
                .param(line)
                .update();
        jdbc.sql(
                        "insert into supply (id, supply_line_id, name, dimension, version) values (?, ?, 'Paint', 'VOLUME', 0)")
                .params(id, line)
                .update();
    }

    private UUID document(String kind, String day) {
        UUID id = UUID.randomUUID();
        jdbc.sql("insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version)"
                        + " values (?, ?, 1, cast(? as date), '', current_timestamp, 0)")
                .params(id, kind, day)
                .update();
        return id;
    }

    private void posting(
            UUID document, int line, String day, String account, @Nullable UUID supply, boolean estimated, long minor) {
        jdbc.sql(
                        "insert into posting (document_id, line, doc_date, account, supply_id, estimated, amount_minor, quantity)"
                                + " values (?, ?, cast(? as date), ?, ?, ?, ?, 0)")
                .params(document, line, day, account, supply, estimated, minor)
                .update();
    }
}
