package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.ledger.Books;
import patinary.ledger.StockPlace;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.selling.Payout;
import patinary.spending.Expense;
import patinary.spending.TillCount;
import patinary.supplies.SupplyCount;
import patinary.testing.ShopTest;

/** What is open in an invented year: each thing is listed until it is put right, and what is left is kept with the seal. */
@ShopTest
class ClosingIT {

    private static final LocalDate MARCH = LocalDate.of(2025, 3, 8);
    private static final LocalDate DECEMBER = LocalDate.of(2025, 12, 20);
    private static final LocalDate JANUARY = LocalDate.of(2026, 1, 10);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Books books;

    @Autowired
    private Closing closing;

    @Autowired
    private Seals seals;

    private final UUID cash = UUID.randomUUID();
    private final UUID balance = UUID.randomUUID();
    private final UUID bank = UUID.randomUUID();
    private final UUID wax = UUID.randomUUID();
    private final UUID piece = UUID.randomUUID();

    @BeforeEach
    void stockTheShop() {
        place(cash, "Cash box", "CASH");
        place(balance, "A channel's balance", "CHANNEL");
        place(bank, "Bank", "BANK");
        UUID line = UUID.randomUUID();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Waxes', 'invented', 0)")
                .param(line)
                .update();
        jdbc.sql("insert into supply (id, supply_line_id, name, dimension, version) values (?, ?, 'Wax', 'MASS', 0)")
                .params(wax, line)
                .update();
        jdbc.sql(
                        "insert into piece (id, code, title, material, place, note, version) values (?, 'P0001', 'Tin tray', '', '', '', 0)")
                .param(piece)
                .update();
    }

    @Test
    void nothingIsOpenInAnEmptyYear() {
        jdbc.sql("delete from piece").update();
        assertThat(closing.items(2025)).isEmpty();
    }

    @Test
    void eachThingIsOpenUntilItIsPutRight() {
        use(MARCH, true);
        books.record(new Expense(UUID.randomUUID(), MARCH, "", "office", "", cash, Amount.of(300)));
        UUID payout = UUID.randomUUID();
        books.record(new Payout(payout, MARCH, "", balance, bank, Amount.of(5000), Amount.of(100)));
        assertThat(closing.items(2025))
                .extracting(OpenItem::item, OpenItem::howMany, OpenItem::amountMinor)
                .containsExactly(
                        tuple(ClosingItem.BELOW_ZERO, 1, -300L),
                        tuple(ClosingItem.UNCOSTED, 1, null),
                        tuple(ClosingItem.NO_COST, 1, null),
                        tuple(ClosingItem.CASH, 1, null),
                        tuple(ClosingItem.PAYOUTS, 1, 5100L));
        assertThat(closing.rows(2025, ClosingItem.UNCOSTED))
                .extracting(ClosingRow::what, ClosingRow::link, ClosingRow::onDay)
                .containsExactly(tuple("Wax", "/supplies/" + wax, MARCH));

        bought(MARCH, "200", Way.OWED);
        assertThat(keys())
                .as("the wax is there, used by eye, owed, and not counted")
                .contains("by-eye", "owed-by");
        assertThat(keys()).doesNotContain("uncosted");

        books.record(new SupplyCount(UUID.randomUUID(), JANUARY, "", wax, StockPlace.BENCH, new BigDecimal("120")));
        assertThat(keys())
                .as("a count of the next year settles nothing of this")
                .contains("by-eye");
        books.record(new SupplyCount(UUID.randomUUID(), DECEMBER, "", wax, StockPlace.BENCH, new BigDecimal("130")));
        books.record(new TillCount(UUID.randomUUID(), DECEMBER, "", cash, Amount.of(0)));
        jdbc.sql("insert into payout_cover (payout_id, said_on, total_minor) values (?, ?, 0)")
                .params(payout, JANUARY)
                .update();
        assertThat(keys()).containsExactly("no-cost", "payouts", "owed-by");
    }

    @Test
    void aCountInTheLastNinetyDaysIsEnough() {
        bought(MARCH, "200", Way.PLACE);
        LocalDate last = LocalDate.of(2025, 12, 31);
        LocalDate counted = last.minusDays(Closing.COUNTED_WITHIN);
        UUID count = UUID.randomUUID();
        books.record(new SupplyCount(count, counted, "", wax, StockPlace.BENCH, new BigDecimal("190")));
        use(counted.plusDays(1), true);
        assertThat(keys()).doesNotContain("by-eye");
        jdbc.sql("update document set doc_date = ? where id = ?")
                .params(counted.minusDays(1), count)
                .update();
        jdbc.sql("update books set changes = changes + 1").update();
        assertThat(keys()).contains("by-eye");
    }

    @Test
    void whatIsMeasuredNeedsNoCount() {
        bought(MARCH, "200", Way.PLACE);
        use(MARCH, false);
        assertThat(keys()).doesNotContain("by-eye");
    }

    @Test
    void aYearIsSealedWithOpenThingsOnlyWhereSheSaysSoAndTheListIsKept() throws Exception {
        use(MARCH, true);
        mvc.perform(post("/year/2025/seal").with(owner()).param("sure", "true").param("note", "handed in"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Say that the year may be sealed with this open")))
                .andExpect(content().string(containsString("handed in")));
        assertThat(seals.of(2025)).isEmpty();
        List<OpenItem> open = closing.items(2025);
        mvc.perform(post("/year/2025/seal")
                        .with(owner())
                        .param("sure", "true")
                        .param("nonetheless", "true")
                        .param("note", "handed in"))
                .andExpect(redirectedUrl("/year/2025"));
        bought(JANUARY, "200", Way.PLACE);
        assertThat(closing.items(2025)).as("put right since").isNotEqualTo(open);
        assertThat(seals.of(2025).orElseThrow().open()).containsExactlyInAnyOrderElementsOf(open);
        mvc.perform(get("/year/2025/seal").with(owner()))
                .andExpect(content().string(containsString("What was open when it was sealed")))
                .andExpect(content().string(containsString("Supplies used and not yet costed")))
                .andExpect(content().string(containsString("handed in")))
                .andExpect(content().string(not(containsString("??"))));
    }

    @Test
    void everyItemOpensItsRows() throws Exception {
        use(MARCH, true);
        for (ClosingItem item : ClosingItem.values()) {
            mvc.perform(get("/year/2025/open/" + item.key()).with(owner()))
                    .andExpect(status().isOk())
                    .andExpect(content().string(not(containsString("??"))));
        }
        mvc.perform(get("/year/2025/open/nothing").with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/year/2025/open/uncosted").with(owner()))
                .andExpect(content().string(containsString("/supplies/" + wax)));
    }

    private List<String> keys() {
        return closing.items(2025).stream()
                .map(OpenItem::item)
                .map(ClosingItem::key)
                .toList();
    }

    private void use(LocalDate day, boolean byEye) {
        books.record(new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day,
                        "",
                        10,
                        "",
                        List.of(new BenchPiece(piece, false)),
                        List.of(new SupplyUse(1, wax, "a dab", new BigDecimal("50"), byEye)),
                        List.of(new UsePiece(1, piece, BigDecimal.ONE)),
                        List.of())));
    }

    private void bought(LocalDate day, String grams, Way way) {
        ReceiptLine line = new ReceiptLine(
                1,
                LineKind.SUPPLY,
                "",
                BigDecimal.ONE,
                Amount.of(1000),
                null,
                null,
                false,
                wax,
                new BigDecimal(grams),
                null);
        @Nullable UUID from = way == Way.PLACE ? bank : null;
        Tender paid = new Tender(1, way, from, Amount.of(1000));
        books.record(new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        Amount.of(1000),
                        List.of(line),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(paid))));
    }

    private void place(UUID id, String name, String kind) {
        jdbc.sql("insert into money_place (id, name, kind, version) values (?, ?, ?, 0)")
                .params(id, name, kind)
                .update();
    }
}
