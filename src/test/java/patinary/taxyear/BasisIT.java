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

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.buying.BillPaid;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.ledger.Books;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.pieces.NewPieces;
import patinary.selling.BuyerPayment;
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.selling.Refund;
import patinary.selling.RefundContent;
import patinary.selling.RefundLine;
import patinary.selling.Sale;
import patinary.selling.SaleContent;
import patinary.selling.SaleLine;
import patinary.selling.SalePiece;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.taxbasis.Adjustment;
import patinary.taxbasis.BasisBook;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/**
 * The worked example of docs/handbook/tax-basis.md, from documents to lines: two invented years with a layaway over the year
 * end, money ahead, store credit, an unpaid bill, and supplies bought in December and used in January. Profit by the books is
 * 90.00 and 185.00.
 */
@ShopTest
class BasisIT {

    private static final LocalDate DECEMBER = LocalDate.of(2025, 12, 10);
    private static final BigDecimal ONE = BigDecimal.ONE;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationContext program;

    @Autowired
    private Books books;

    @Autowired
    private Years years;

    @Autowired
    private Seals seals;

    @Autowired
    private BasisBook basis;

    private final UUID cash = UUID.randomUUID();
    private final UUID stall = UUID.randomUUID();
    private final UUID layaway = UUID.randomUUID();
    private final UUID bill = UUID.randomUUID();

    @BeforeEach
    void twoYears() {
        program.getBean(MoneyPlaces.class).save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
        program.getBean(Channels.class).save(new Channel(stall, "Stall", cash, false, List.of()));
        StockedBench bench = new StockedBench(program);
        UUID tray = piece("Tray");
        UUID jug = piece("Jug");
        UUID mug = piece("Mug");
        // Bought and owed: 60.00 of paint and 40.00 of office things.
        books.record(new Receipt(bill, owed(bench.paint)));
        books.record(used(DECEMBER, bench.paint, bench.box, 50));
        // 100.00 and 8.00 of sales tax; 36.00 is paid, 72.00 is owed over the year end.
        books.record(sale(
                layaway,
                LocalDate.of(2025, 12, 15),
                tray,
                10000,
                800,
                new Tender(1, Way.PLACE, cash, Amount.of(3600)),
                new Tender(2, Way.OWED, null, Amount.of(7200))));
        books.record(new BuyerPayment(
                UUID.randomUUID(), LocalDate.of(2025, 12, 20), "", null, "Fay", cash, Amount.of(6000)));
        UUID returned = UUID.randomUUID();
        books.record(sale(
                returned, LocalDate.of(2025, 12, 22), jug, 5000, 0, new Tender(1, Way.PLACE, cash, Amount.of(5000))));
        books.record(new Refund(
                UUID.randomUUID(),
                new RefundContent(
                        LocalDate.of(2025, 12, 28),
                        "",
                        returned,
                        Way.STORE_CREDIT,
                        null,
                        Amount.ZERO,
                        Amount.ZERO,
                        Amount.ZERO,
                        null,
                        List.of(new RefundLine(1, jug, null, null, Amount.of(2000), false, null)))));

        books.record(used(LocalDate.of(2026, 1, 5), bench.paint, bench.crate, 100));
        books.record(
                new BuyerPayment(UUID.randomUUID(), LocalDate.of(2026, 1, 15), "", layaway, "", cash, Amount.of(7200)));
        books.record(new BillPaid(UUID.randomUUID(), LocalDate.of(2026, 1, 20), "", bill, cash, Amount.of(10000)));
        books.record(sale(
                UUID.randomUUID(),
                LocalDate.of(2026, 2, 1),
                bench.box,
                18000,
                0,
                new Tender(1, Way.DEPOSIT, null, Amount.of(6000)),
                new Tender(2, Way.PLACE, cash, Amount.of(12000))));
        books.record(sale(
                UUID.randomUUID(),
                LocalDate.of(2026, 3, 1),
                mug,
                2000,
                0,
                new Tender(1, Way.STORE_CREDIT, null, Amount.of(2000))));
    }

    @Test
    void asTheBooksHaveItNothingIsAdjusted() {
        assertProfits(2025, "90.00", "90.00");
        assertProfits(2026, "185.00", "185.00");
    }

    /** Received 33.33 + 60.00 + 50.00 and nothing paid; then 66.67 + 120.00 less 40.00 paid and 15.00 of cost. */
    @Test
    void byCash() throws Exception {
        set(2025, "CASH", "WHEN_USED").andExpect(redirectedUrl("/year/2025/basis"));
        assertProfits(2025, "90.00", "143.33");
        assertProfits(2026, "185.00", "131.67");
        assertThat(line(2025, "gross_receipts")).isEqualTo(usd("163.33"));
        assertThat(line(2025, "office")).isEqualTo(Amount.ZERO);
        assertThat(line(2026, "office")).isEqualTo(usd("40.00"));
        read("/year/2025/line/gross_receipts")
                .andExpect(content().string(containsString("/sales/" + layaway)))
                .andExpect(content().string(containsString("$163.33")));
        read("/year/2025/basis/rows/unpaid-sale").andExpect(content().string(containsString("66.67")));
        read("/year/2025/basis/rows/unpaid-expense").andExpect(content().string(containsString("/receipts/" + bill)));
        read("/year/2025/tax-adjustments.csv").andExpect(content().string(containsString("UNPAID_SALE")));
    }

    /** All 60.00 of paint in the first year; in the second no supplies, so the 15.00 that were sold are no cost again. */
    @Test
    void suppliesWhenBought() throws Exception {
        set(2025, "SALE_DATE", "WHEN_BOUGHT").andExpect(redirectedUrl("/year/2025/basis"));
        assertProfits(2025, "90.00", "30.00");
        assertProfits(2026, "185.00", "200.00");
        assertThat(line(2025, "cogs_closing")).isEqualTo(Amount.ZERO);
        assertThat(line(2025, "cogs_total")).isEqualTo(usd("60.00"));
        assertThat(line(2026, "cogs_total")).isEqualTo(Amount.ZERO);
    }

    /** Bought in December and paid in January: deducted in January. */
    @Test
    void both() throws Exception {
        set(2025, "CASH", "WHEN_BOUGHT").andExpect(redirectedUrl("/year/2025/basis"));
        assertProfits(2025, "90.00", "143.33");
        assertProfits(2026, "185.00", "86.67");
    }

    /** Whatever is set in whatever year, both years together are taxed on what was earned, less what is still to come. */
    @Test
    void aChangeIsShownApartAndCountsNothingTwice() throws Exception {
        set(2026, "CASH", "WHEN_USED").andExpect(redirectedUrl("/year/2026/basis"));
        assertThat(basis.year(2026).opening()).isEqualTo(usd("53.33"));
        assertThat(basis.year(2026).within()).isEqualTo(usd("-53.33"));
        assertProfits(2026, "185.00", "185.00");
        set(2025, "CASH", "WHEN_BOUGHT");
        assertProfits(2025, "90.00", "143.33");
        assertProfits(2026, "185.00", "131.67");
        set(2026, "SALE_DATE", "WHEN_BOUGHT");
        assertThat(line(2026, "cogs_opening"))
                .as("what the year before ended with")
                .isEqualTo(line(2025, "cogs_closing"));
        assertProfits(2026, "185.00", "86.67");
        mvc.perform(post("/year/2026/basis/back").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/year/2026/basis"));
        assertProfits(2026, "185.00", "86.67");
        assertThat(basis.year(2026).opening()).isEqualTo(Amount.ZERO);
    }

    @Test
    void showsWhatItWouldDoBeforeItIsKept() throws Exception {
        read("/year/2025/basis/try?income=CASH&supplies=WHEN_USED")
                .andExpect(content().string(containsString("$143.33")))
                .andExpect(content().string(containsString("need consent")));
        assertProfits(2025, "90.00", "90.00");
        mvc.perform(post("/year/2025/basis")
                        .with(InventedShop.owner())
                        .param("income", "CASH")
                        .param("supplies", "WHEN_USED")
                        .param("note", "asked Ida"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("asked Ida")));
        mvc.perform(get("/year/2025/basis/try?income=NEVER").with(InventedShop.owner()))
                .andExpect(status().is(422));
        mvc.perform(post("/year/2025/basis")
                        .with(user("Kim").roles("HELPER"))
                        .with(csrf())
                        .param("income", "CASH")
                        .param("supplies", "WHEN_USED")
                        .param("sure", "true"))
                .andExpect(forwardedUrl("/refused"));
        assertProfits(2025, "90.00", "90.00");
    }

    @Test
    void aSealedYearStaysAsItWasCounted() throws Exception {
        set(2025, "CASH", "WHEN_USED");
        seals.seal(2025, "");
        set(2025, "SALE_DATE", "WHEN_USED").andExpect(status().is(422));
        set(2024, "CASH", "WHEN_BOUGHT").andExpect(status().is(422));
        mvc.perform(post("/year/2025/basis/back").with(InventedShop.owner()));
        assertProfits(2025, "90.00", "143.33");
        set(2026, "SALE_DATE", "WHEN_USED").andExpect(redirectedUrl("/year/2026/basis"));
        assertProfits(2026, "185.00", "131.67");
        read("/year/2025/basis").andExpect(content().string(containsString("is sealed")));
    }

    private void assertProfits(int year, String book, String tax) {
        YearPage page = years.page(year);
        assertThat(page.bookProfit()).as("by the books").isEqualTo(usd(book)).isEqualTo(basis.bookProfit(year));
        assertThat(page.profit()).as("for tax").isEqualTo(usd(tax)).isEqualTo(line(year, "net_profit"));
        assertThat(page.agrees()).as("%s", page.goods()).isTrue();
        for (Adjustment row : page.adjustments().rows()) {
            assertThat(row.sides().get(0).amount().plus(row.sides().get(1).amount()))
                    .isEqualTo(Amount.ZERO);
        }
    }

    private Amount line(int year, String meaning) {
        return years.page(year).parts().stream()
                .flatMap(part -> part.lines().stream())
                .filter(line -> line.line().meaning().equals(meaning))
                .findFirst()
                .map(YearPage.Line::amount)
                .orElse(Amount.ZERO);
    }

    private ResultActions set(int year, String income, String supplies) throws Exception {
        return mvc.perform(post("/year/" + year + "/basis")
                .with(InventedShop.owner())
                .param("income", income)
                .param("supplies", supplies)
                .param("sure", "true"));
    }

    private ResultActions read(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("??"))));
    }

    private UUID piece(String title) {
        return program.getBean(NewPieces.class).create(title, null, null);
    }

    private ReceiptContent owed(UUID paint) {
        ReceiptLine jar = new ReceiptLine(
                1,
                LineKind.SUPPLY,
                "Paint",
                ONE,
                usd("60.00"),
                null,
                null,
                false,
                paint,
                BigDecimal.valueOf(200),
                null);
        ReceiptLine paper = new ReceiptLine(
                2, LineKind.EXPENSE, "Paper", ONE, usd("40.00"), null, null, false, null, null, "office");
        return new ReceiptContent(
                LocalDate.of(2025, 12, 2),
                "",
                null,
                null,
                usd("100.00"),
                List.of(jar, paper),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Tender(1, Way.OWED, null, usd("100.00"))));
    }

    private static BenchEntry used(LocalDate day, UUID paint, UUID piece, int quantity) {
        return new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day,
                        "",
                        30,
                        "",
                        List.of(new BenchPiece(piece, true)),
                        List.of(new SupplyUse(1, paint, "some", BigDecimal.valueOf(quantity), false)),
                        List.of(new UsePiece(1, piece, ONE)),
                        List.of()));
    }

    private Sale sale(UUID id, LocalDate day, UUID piece, long price, long tax, Tender... paid) {
        return new Sale(
                id,
                new SaleContent(
                        day,
                        "",
                        stall,
                        "",
                        "",
                        Amount.ZERO,
                        Amount.ZERO,
                        Amount.of(tax),
                        false,
                        Amount.ZERO,
                        cash,
                        null,
                        List.of(new SaleLine(1, "", ONE, Amount.of(price), Amount.ZERO, null, null)),
                        List.of(new SalePiece(1, piece, ONE)),
                        List.of(paid),
                        List.of()));
    }

    private static Amount usd(String dollars) {
        return Amount.of(new BigDecimal(dollars).movePointRight(2).longValueExact());
    }
}
