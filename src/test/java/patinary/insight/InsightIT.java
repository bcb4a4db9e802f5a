package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.ledger.Turn;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** The front page and what moves, on stored rows. Everything is invented. */
@ShopTest
class InsightIT {

    private static final LocalDate FIRST = LocalDate.of(2025, 3, 1);
    private static final LocalDate LAST = LocalDate.of(2025, 3, 31);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Moves moves;

    /** To be taken after what is written past the books and is to be seen. */
    @Autowired
    private Turn turn;

    @Autowired
    private MoneyReport money;

    @Autowired
    private Shelf shelf;

    @Autowired
    private CurrentShop shop;

    private final UUID cash = UUID.randomUUID();
    private final UUID stall = UUID.randomUUID();
    private final UUID cottage = UUID.randomUUID();
    private final UUID box = UUID.randomUUID();
    private final UUID tray = UUID.randomUUID();
    private final UUID sale = UUID.randomUUID();

    @Test
    void anEmptyShopIsToldWhatToDoFirst() throws Exception {
        mvc.perform(get("/").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("/money-places/new")))
                .andExpect(content().string(containsString("run.arguments=demo")))
                .andExpect(content().string(not(containsString("??"))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bench",
                "ready",
                "to-post",
                "low",
                "uncosted",
                "no-cost",
                "found",
                "sold",
                "owed-to",
                "owed-by",
                "tied-pieces",
                "tied-bench",
                "tied-shelf"
            })
    void everyListHasAPage(String list) throws Exception {
        shopWithTwoPieces(LAST);
        mvc.perform(get("/on-the-shelf/" + list).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("??"))));
    }

    @Test
    void whatIsNoListIsNotFound() throws Exception {
        mvc.perform(get("/on-the-shelf/attic").with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/moves?by=weather").with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/moves/days?by=weather").with(owner())).andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @EnumSource
    void theSpeedOfEveryKindOfGroupIsShown(SpeedBy group) throws Exception {
        String by = group.word();
        shopWithTwoPieces(LAST);
        mvc.perform(get("/moves/days?row=0&by=" + by).with(owner())).andExpect(status().isOk());
        mvc.perform(get("/moves/days?by=" + by).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Cedar box")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/moves/days.csv?by=" + by).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("half_sold_after_days")));
    }

    /** The box sold; the tray and its lid wait on one offer, a set: two rounds, three pieces. */
    @Test
    void theFileOfDaysCountsPiecesBesideRounds() throws Exception {
        shopWithTwoPieces(LAST);
        UUID lid = UUID.randomUUID();
        piece(lid, "P0003", "Lid of the tray");
        jdbc.sql(
                        "insert into offer_piece (offer_id, piece_id, weight) select offer_id, ?, 1 from offer_piece where piece_id = ?")
                .params(lid, tray)
                .update();
        InventedShop.keepFigures(program);
        mvc.perform(get("/moves/days.csv?by=style").with(owner()))
                .andExpect(content().string(containsString("style,rounds,pieces,sold,withdrawn,on_offer,")))
                .andExpect(content().string(containsString("Cottage,2,3,1,0,1,")));
    }

    @Test
    void theSpeedOfAnEmptyShopSaysWhatToDo() throws Exception {
        mvc.perform(get("/moves/days").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("/offers/new")))
                .andExpect(content().string(not(containsString("??"))));
    }

    @Test
    void theFrontPageCountsTheRowsItOpens() throws Exception {
        LocalDate today = shop.today();
        shopWithTwoPieces(today);
        List<Shelf.Heap> heaps = shelf.heaps(today);
        assertThat(heaps)
                .extracting(Shelf.Heap::list)
                .containsExactly(ShelfList.TO_POST, ShelfList.SOLD, ShelfList.OWED_TO, ShelfList.TIED_PIECES);
        for (Shelf.Heap heap : heaps) {
            var rows = shelf.rows(heap.list(), today, patinary.web.Window.of(1));
            assertThat(rows.total()).isEqualTo(heap.count());
            long sum = rows.rows().stream()
                    .mapToLong(row -> row.amountMinor() == null ? 0 : row.amountMinor())
                    .sum();
            assertThat(sum).as(heap.list().word()).isEqualTo(heap.amountMinor());
        }
        mvc.perform(get("/").with(owner()))
                .andExpect(content().string(containsString("Cedar box")))
                .andExpect(content().string(containsString("$10.00")))
                .andExpect(content().string(not(containsString("??"))));
        assertThat(shelf.heaps(today.plusDays(31))).extracting(Shelf.Heap::list).doesNotContain(ShelfList.SOLD);
    }

    @Test
    void groupsAddUpToTheShop() {
        shopWithTwoPieces(LocalDate.of(2025, 3, 12));
        for (By by : By.values()) {
            MoveTable table = moves.table(by, FIRST, LAST, Narrowing.WHOLE);
            assertThat(table.rows().stream().map(MoveRow::net).collect(Amount.sum()))
                    .as(by.word())
                    .isEqualTo(Amount.of(5100));
            assertThat(table.whole().net()).isEqualTo(Amount.of(5100));
            assertThat(table.whole().cost()).isEqualTo(Amount.of(1620));
            assertThat(table.whole().sold()).isEqualTo(1);
            assertThat(table.whole().onOffer()).isEqualTo(2);
            assertThat(table.whole().waiting()).isEqualTo(1);
        }
        MoveRow style =
                moves.table(By.STYLE, FIRST, LAST, Narrowing.WHOLE).rows().get(0);
        assertThat(style.name()).isEqualTo("Cottage");
        assertThat(style.medianDays()).isEqualByComparingTo("15");
        assertThat(moves.table(By.LINE, FIRST, LAST, Narrowing.WHOLE).rows())
                .extracting(MoveRow::name)
                .containsExactly("");
    }

    @Test
    void whatMovesIsAPageAndAFile() throws Exception {
        shopWithTwoPieces(LocalDate.of(2025, 3, 12));
        for (By by : By.values()) {
            mvc.perform(get("/moves?from=2025-03-01&to=2025-03-31&by=" + by.word())
                            .with(owner()))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("$51.00")))
                    .andExpect(content().string(not(containsString("Nothing was found"))))
                    .andExpect(content().string(not(containsString("??"))));
        }
        mvc.perform(get("/moves.csv?from=2025-03-01&to=2025-03-31&by=style").with(owner()))
                .andExpect(header().string("Content-Type", "text/csv;charset=UTF-8"))
                .andExpect(
                        content().string(containsString("Cottage,2,2,1,1,15,1,50,50,6.1,93.9,16.20,51.00,34.80,68.2")));
        mvc.perform(get("/moves?from=2024-01-01&to=2024-01-31").with(owner()))
                .andExpect(content().string(containsString("Nothing was found")));
    }

    @Test
    void theMoneyOfEveryKindOfGroupIsAPageAndAFile() throws Exception {
        shopWithTwoPieces(LocalDate.of(2025, 3, 12));
        for (MoneyBy by : MoneyBy.values()) {
            String asked = "?from=2025-03-01&to=2025-03-31&row=0&by=" + by.word();
            mvc.perform(get("/moves/money" + asked).with(owner()))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("$34.80")))
                    .andExpect(content().string(containsString("Cedar box")))
                    .andExpect(content().string(not(containsString("??"))));
            mvc.perform(get("/moves/money/fall.csv" + asked).with(owner()))
                    .andExpect(content().string(containsString("profit,34.80")));
            mvc.perform(get("/moves/money/months.csv" + asked).with(owner()))
                    .andExpect(content().string(containsString("2025-03,1,51.00,34.80")));
            mvc.perform(get("/moves/money/age.csv" + asked).with(owner()))
                    .andExpect(content().string(containsString("days_since_found_from,pieces,tied_up")));
            mvc.perform(get("/moves/money/pieces.csv" + asked).with(owner()))
                    .andExpect(content()
                            .string(containsString("P0001,Cedar box,2025-03-12,false,51.00,16.20,0.00,34.80,0,,,")));
            mvc.perform(get("/moves/money/before-after.csv" + asked).with(owner()))
                    .andExpect(content().string(containsString("16.20,0.00,16.20,51.00,34.80")));
            mvc.perform(get("/moves/money.csv" + asked).with(owner()))
                    .andExpect(content().string(containsString("51.00,16.20,34.80,68.2,214.8")));
        }
        mvc.perform(get("/moves/money/lines.csv?from=2025-03-01&to=2025-03-31").with(owner()))
                .andExpect(content().string(containsString("no_supply,,1,0.00,34.80")));
        mvc.perform(get("/moves/money?by=weather").with(owner())).andExpect(status().isNotFound());
    }

    @Test
    void whatToMakeNextAndTheMonthsArePagesAndFiles() throws Exception {
        for (String page : List.of("/moves/next", "/moves/next?order=money", "/moves/seasons")) {
            mvc.perform(get(page).with(owner()))
                    .andExpect(status().isOk())
                    .andExpect(content().string(not(containsString("??"))));
        }
        shopWithTwoPieces(LocalDate.of(2025, 3, 12));
        mvc.perform(get("/moves/next?row=0").with(owner()))
                .andExpect(content().string(containsString("Cedar box")))
                .andExpect(content().string(containsString("Too few to tell")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/moves/next.csv").with(owner())).andExpect(content().string(containsString("Cottage")));
        mvc.perform(get("/moves/next?order=luck").with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/moves/seasons").with(owner()))
                .andExpect(content().string(containsString("Too early to speak of months")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/moves/seasons.csv").with(owner())).andExpect(content().string(containsString("ratio_drawn")));
        mvc.perform(get("/moves/seasons/first-offered.csv?first=2025-02").with(owner()))
                .andExpect(content().string(containsString("P0001,Cedar box,2025-02-20,15,sold")));
        mvc.perform(get("/moves/seasons/first-offered.csv?first=2025-01").with(owner()))
                .andExpect(status().isNotFound());
    }

    /** The month's profit by the books is that of its one sale, 51.00 less 16.20; no minutes were noted. */
    @Test
    void whatAnHourEarnedIsAPageAndAFile() throws Exception {
        shopWithTwoPieces(LocalDate.of(2025, 3, 12));
        String asked = "?from=2025-03-05&to=2025-03-20";
        mvc.perform(get("/moves/hours" + asked).with(owner()))
                .andExpect(content().string(containsString("$34.80")))
                .andExpect(content().string(containsString("March 2025")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/moves/hours.csv" + asked).with(owner()))
                .andExpect(content().string(containsString("2025-03,34.80,0,,34.80,1,1,34.80,0,")));
    }

    /** 26.20 on 11 days and 10.00 on 20 days of 31; 34.80 and 16.20 for a year on the mean of them. */
    @Test
    void theMoneyInStockIsTheMeanOfAllDays() {
        shopWithTwoPieces(LocalDate.of(2025, 3, 12));
        MoneyRow whole = money.answer(MoneyBy.STYLE, FIRST, LAST, Narrowing.WHOLE)
                .table()
                .whole();
        assertThat(whole.tied()).isEqualTo(Amount.of(1000));
        assertThat(whole.tiedDays()).isEqualByComparingTo("30");
        assertThat(whole.grossReturn()).isEqualByComparingTo("26.02");
        assertThat(whole.turn()).isEqualByComparingTo("12.11");
    }

    /** A tray of somebody else, sold for her: not found, offered or waiting in her shop, and no money of hers lies in it. */
    @Test
    void whatBelongsToOthersIsNoPieceOfHers() {
        shopWithTwoPieces(LocalDate.of(2025, 3, 12));
        jdbc.sql(
                        "insert into piece_owner (piece_id, arrangement, owner, since, note) values (?, 'COMMISSION', 'Ash', ?, '')")
                .params(tray, FIRST)
                .update();
        MoveTable table = moves.table(By.STYLE, FIRST, LAST, Narrowing.WHOLE);
        for (MoveRow row : List.of(table.whole(), table.rows().get(0))) {
            assertThat(row.found()).isEqualTo(1);
            assertThat(row.onOffer()).isEqualTo(1);
            assertThat(row.waiting()).isZero();
        }
        MoneyRow whole =
                money.answer(MoneyBy.KIND, FIRST, LAST, Narrowing.WHOLE).table().whole();
        assertThat(whole.tied()).isEqualTo(Amount.ZERO);
        assertThat(whole.profit()).isEqualTo(Amount.of(3480));
        jdbc.sql(
                        "insert into piece_owner (piece_id, arrangement, owner, since, note) values (?, 'CONSIGNED', 'Ash', ?, '')")
                .params(box, FIRST)
                .update();
        turn.take();
        assertThat(moves.table(By.STYLE, FIRST, LAST, Narrowing.WHOLE).whole().sold())
                .isZero();
        assertThat(money.answer(MoneyBy.KIND, FIRST, LAST, Narrowing.WHOLE)
                        .table()
                        .whole()
                        .profit())
                .isEqualTo(Amount.ZERO);
    }

    /** 3 on the bench and 4 on the retail shelf: 7 is not low where 5 is the mark, and is where 7 is. */
    @Test
    void aSupplyRunsLowByBenchAndShelfTogether() {
        UUID line = UUID.randomUUID();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Wax', '', 0)")
                .param(line)
                .update();
        UUID wax = UUID.randomUUID();
        jdbc.sql(
                        "insert into supply (id, supply_line_id, name, dimension, low_quantity, version) values (?, ?, 'Clear wax', 'COUNT', 5, 0)")
                .params(wax, line)
                .update();
        UUID receipt = document("RECEIPT", 1, FIRST);
        stocked(receipt, 0, "BENCH", wax, 3);
        stocked(receipt, 1, "SHELF", wax, 4);
        assertThat(shelf.heaps(LAST)).extracting(Shelf.Heap::list).doesNotContain(ShelfList.LOW);
        jdbc.sql("update supply set low_quantity = 7").update();
        turn.take();
        assertThat(shelf.heaps(LAST)).extracting(Shelf.Heap::list).contains(ShelfList.LOW);
    }

    private void stocked(UUID receipt, int line, String account, UUID supply, int quantity) {
        jdbc.sql(
                        "insert into posting (document_id, line, doc_date, account, supply_id, estimated, amount_minor, quantity) values (?, ?, ?, ?, ?, false, 100, ?)")
                .params(receipt, line, FIRST, account, supply, quantity)
                .update();
        InventedShop.keepFigures(program);
    }

    /** A box found in February, on offer from 20 February with a pause 1 to 5 March, sold; a tray on offer from 5 March. */
    private void shopWithTwoPieces(LocalDate sold) {
        jdbc.sql("insert into money_place (id, name, kind, version) values (?, 'Cash box', 'CASH', 0)")
                .param(cash)
                .update();
        jdbc.sql("insert into channel (id, name, money_place_id, passes_tax, version) values (?, 'Stall', ?, false, 0)")
                .params(stall, cash)
                .update();
        jdbc.sql("insert into style (id, name, version) values (?, 'Cottage', 0)")
                .param(cottage)
                .update();
        piece(box, "P0001", "Cedar box");
        piece(tray, "P0002", "=Tin tray");
        UUID receipt = document("RECEIPT", 1, LocalDate.of(2025, 3, 1));
        jdbc.sql("insert into receipt (id, till_total_minor) values (?, 2620)")
                .param(receipt)
                .update();
        jdbc.sql(
                        "insert into receipt_line (receipt_id, line, kind, title, quantity, price_minor, about) values (?, 1, 'PIECES', 'Box and tray', 1, 2620, false)")
                .param(receipt)
                .update();
        bought(receipt, 0, box, 1620);
        bought(receipt, 1, tray, 1000);
        UUID offer = offer(LocalDate.of(2025, 2, 20), box);
        jdbc.sql("insert into offer_pause (offer_id, paused_from, paused_to) values (?, ?, ?)")
                .params(offer, LocalDate.of(2025, 3, 1), LocalDate.of(2025, 3, 5))
                .update();
        offer(LocalDate.of(2025, 3, 5), tray);
        sell(sold);
        InventedShop.keepFigures(program);
    }

    private void sell(LocalDate day) {
        jdbc.sql(
                        "insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version) values (?, 'SALE', 6, ?, '', ?, 0)")
                .params(sale, day, moment())
                .update();
        jdbc.sql(
                        "insert into sale (id, channel_id, buyer, order_reference, discount_minor, shipping_minor, tax_minor, tax_passed, fee_minor) values (?, ?, 'Ash', '', 0, 600, 0, false, 0)")
                .params(sale, stall)
                .update();
        jdbc.sql(
                        "insert into sale_line (sale_id, line, title, quantity, price_minor, discount_minor) values (?, 1, 'Cedar box', 1, 4500, 0)")
                .param(sale)
                .update();
        jdbc.sql("insert into sale_piece (sale_id, line, piece_id, weight) values (?, 1, ?, 1)")
                .params(sale, box)
                .update();
        posting(sale, 0, day, "SALES", box, -4500);
        posting(sale, 1, day, "SHIPPING_CHARGED", box, -600);
        posting(sale, 2, day, "RECEIVABLE", null, 5100);
        posting(sale, 3, day, "PIECES", box, -1620);
        posting(sale, 4, day, "COST_OF_PIECES", box, 1620);
    }

    private void piece(UUID id, String code, String title) {
        jdbc.sql(
                        "insert into piece (id, code, title, style_id, material, place, note, version) values (?, ?, ?, ?, '', '', '', 0)")
                .params(id, code, title, cottage)
                .update();
    }

    private void bought(UUID receipt, int line, UUID piece, long cost) {
        jdbc.sql("insert into receipt_piece (receipt_id, line, piece_id, weight) values (?, 1, ?, 1)")
                .params(receipt, piece)
                .update();
        posting(receipt, line, LocalDate.of(2025, 3, 1), "PIECES", piece, cost);
    }

    private UUID offer(LocalDate from, UUID piece) {
        UUID offer = document("OFFER", 9, from);
        jdbc.sql("insert into offer (id, title) values (?, '')").param(offer).update();
        jdbc.sql("insert into offer_piece (offer_id, piece_id, weight) values (?, ?, 1)")
                .params(offer, piece)
                .update();
        jdbc.sql("insert into offer_channel (offer_id, channel_id) values (?, ?)")
                .params(offer, stall)
                .update();
        return offer;
    }

    private UUID document(String kind, int rank, LocalDate day) {
        UUID id = UUID.randomUUID();
        jdbc.sql(
                        "insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version) values (?, ?, ?, ?, '', ?, 0)")
                .params(id, kind, rank, day, moment())
                .update();
        return id;
    }

    private void posting(UUID document, int line, LocalDate day, String account, UUID piece, long amount) {
        jdbc.sql(
                        "insert into posting (document_id, line, doc_date, account, piece_id, estimated, amount_minor, quantity) values (?, ?, ?, ?, ?, false, ?, 0)")
                .params(document, line, day, account, piece, amount)
                .update();
    }

    private static OffsetDateTime moment() {
        return OffsetDateTime.of(2025, 3, 31, 12, 0, 0, 0, ZoneOffset.UTC);
    }
}
