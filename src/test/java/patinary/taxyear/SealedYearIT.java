package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.support.TransactionTemplate;
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
import patinary.ledger.Check;
import patinary.ledger.Document;
import patinary.ledger.Refused;
import patinary.ledger.StockPlace;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.selling.Refund;
import patinary.selling.RefundContent;
import patinary.selling.Sale;
import patinary.selling.SaleContent;
import patinary.selling.SaleLine;
import patinary.spending.Expense;
import patinary.supplies.SupplyCount;
import patinary.supplies.Taking;
import patinary.testing.ShopTest;
import patinary.whole.RandomShop;

/** An invented year is sealed and the shop goes on: whatever is recorded later, no figure of the sealed year moves. */
@ShopTest
class SealedYearIT {

    /** The pure test makes a thousand; these go through the program. */
    private static final int EDITS = 40;

    private static final LocalDate NEXT = LocalDate.of(2026, 1, 1);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Books books;

    @Autowired
    private Check check;

    @Autowired
    private Seals seals;

    @Autowired
    private Years years;

    @Autowired
    private Corrections corrections;

    @Autowired
    private TransactionTemplate transaction;

    private final UUID cash = UUID.randomUUID();
    private final UUID stall = UUID.randomUUID();
    private final List<UUID> supplies = ids(3);
    private final List<UUID> pieces = ids(6);
    private final List<Document> open = new ArrayList<>();

    @BeforeEach
    void aYear() {
        UUID line = UUID.randomUUID();
        jdbc.sql("insert into money_place (id, name, kind, version) values (?, 'Cash box', 'CASH', 0)")
                .param(cash)
                .update();
        jdbc.sql("insert into channel (id, name, money_place_id, passes_tax, version) values (?, 'Stall', ?, false, 0)")
                .params(stall, cash)
                .update();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Chalk paints', 'invented', 0)")
                .param(line)
                .update();
        for (int i = 0; i < supplies.size(); i++) {
            jdbc.sql("insert into supply (id, supply_line_id, name, dimension, version) values (?, ?, ?, 'VOLUME', 0)")
                    .params(supplies.get(i), line, "Paint " + i)
                    .update();
        }
        for (int i = 0; i < pieces.size(); i++) {
            jdbc.sql(
                            "insert into piece (id, code, title, material, place, note, version) values (?, ?, ?, '', '', '', 0)")
                    .params(pieces.get(i), "P000" + i, "Piece " + i)
                    .update();
        }
        RandomShop.history(5, new RandomShop.Things(cash, stall, supplies, pieces)).stream()
                .sorted(Comparator.comparing(Document::ref))
                .forEach(books::record);
        books.record(use(LocalDate.of(2025, 12, 30), supplies.get(0), true));
    }

    @Test
    void laterEditsImportsAndCountsLeaveEveryFigureAndTheFingerprint() {
        seals.seal(2025, "");
        List<Map<String, Object>> sealed = rows();
        String hash = seals.of(2025).orElseThrow().hash();
        YearPage page = years.page(2025);
        Random random = new Random(7);
        for (int edit = 0; edit < EDITS; edit++) {
            edit(edit, random);
            assertThat(rows()).as("edit %s", edit).isEqualTo(sealed);
            if (edit % 10 == 9) {
                assertThat(seals.fingerprint(2025)).isEqualTo(hash);
                assertThat(seals.of(2025).orElseThrow().holds()).isTrue();
                assertThat(years.page(2025)).isEqualTo(page);
                assertThat(years.page(2026).goods().opening())
                        .isEqualTo(page.goods().closing());
                assertThat(years.page(2026).agrees()).isTrue();
                assertThat(check.run()).isEmpty();
            }
        }
        assertThat(open).hasSizeGreaterThan(EDITS / 3);
        List<Map<String, Object>> all = all();
        jdbc.sql("delete from posting").update();
        books.rederive();
        assertThat(all()).as("rebuilt, as a restored shop is").isEqualTo(all);
    }

    @Test
    void whatACountSaysAboutTheSealedYearIsPostedOnItsDayAndSaidSo() throws Exception {
        seals.seal(2025, "");
        UUID count = UUID.randomUUID();
        books.record(
                new SupplyCount(count, NEXT.plusDays(4), "", supplies.get(0), StockPlace.BENCH, new BigDecimal("1")));
        assertThat(corrections.in(2026)).isNotEmpty().allSatisfy(row -> {
            assertThat(row.documentId()).isEqualTo(count);
            assertThat(row.originDate()).isBefore(NEXT);
        });
        assertThat(corrections.in(2025)).isEmpty();
        page("/year/2026", "Corrections of an earlier, sealed year");
        page("/supplies/counts/" + count, "This corrects an earlier, sealed year");
        UUID used = jdbc.sql("select id from bench_entry order by cast(id as varchar(36)) desc fetch first 1 row only")
                .query(UUID.class)
                .single();
        page("/bench/" + used, "is of a sealed year and stays as it is");
        mvc.perform(post("/expenses/new")
                        .with(owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-12-31")
                        .param("category", "office")
                        .param("placeId", cash.toString())
                        .param("amount", "3"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("2026-01-01 or later")));
    }

    @Test
    void anotherWayOfCountingIsPostedOnTheFirstOpenDayAndSaidSo() throws Exception {
        seals.seal(2025, "");
        List<Map<String, Object>> sealed = rows();
        other();
        assertThat(rows()).isEqualTo(sealed);
        assertThat(check.run()).isEmpty();
        assertThat(corrections.in(2026)).isNotEmpty().allSatisfy(row -> {
            assertThat(row.docDate()).isEqualTo(NEXT);
            assertThat(row.link()).isEqualTo("/year/2025/seal");
        });
        page("/year/2026", "Seal: correction of an earlier, sealed year");
        assertThat(years.page(2026).agrees()).isTrue();

        seals.takeOff(2025, "Robin", "to count it the other way");
        assertThat(corrections.in(2026))
                .as("the open year is counted the other way itself")
                .isEmpty();
        assertThat(rows()).isNotEqualTo(sealed);
        assertThat(jdbc.sql("select count(*) from sealed_posting")
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(check.run()).isEmpty();
    }

    private void edit(int number, Random random) {
        LocalDate day = NEXT.plusDays(random.nextInt(200));
        UUID supply = supplies.get(random.nextInt(supplies.size()));
        BigDecimal quantity = BigDecimal.valueOf(1 + random.nextInt(100));
        switch (number % 10) {
            case 0, 5 -> record(new SupplyCount(id(), day, "", supply, StockPlace.BENCH, quantity));
            case 1 -> record(bought(day, supply, quantity));
            case 2 -> record(use(day, supply, random.nextBoolean()));
            case 3 -> recordAll(Stream.generate(() -> sale(day)).limit(3).toList());
            case 4 -> refusedBackDated(supply, quantity);
            case 6 -> record(new Taking(id(), day, "", supply, quantity, false));
            case 7 -> refund(day);
            case 8 -> changeOrRemove(random);
            default -> other();
        }
    }

    private void refusedBackDated(UUID supply, BigDecimal quantity) {
        LocalDate day = NEXT.minusDays(1);
        assertThatThrownBy(() -> books.record(new SupplyCount(id(), day, "", supply, StockPlace.BENCH, quantity)))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> books.record(new Expense(id(), day, "", "office", "", cash, Amount.of(1))))
                .isInstanceOf(Refused.class);
        UUID old = jdbc.sql(
                        "select id from receipt where id in (select id from document where doc_date < ?) order by cast(id as varchar(36)) desc fetch first 1 row only")
                .param(NEXT)
                .query(UUID.class)
                .single();
        assertThatThrownBy(() -> transaction.executeWithoutResult(
                        state -> books.remove(books.find(Document.class, old).orElseThrow())))
                .isInstanceOf(Refused.class);
    }

    /** Money back for a sale of the sealed year. */
    private void refund(LocalDate day) {
        UUID sale = jdbc.sql(
                        "select s.id from sale s join document d on d.id = s.id where d.doc_date < ? order by cast(s.id as varchar(36)) desc fetch first 1 row only")
                .param(NEXT)
                .query(UUID.class)
                .single();
        record(new Refund(
                id(),
                new RefundContent(
                        day, "", sale, Way.PLACE, cash, Amount.of(25), Amount.ZERO, Amount.ZERO, null, List.of())));
    }

    private void changeOrRemove(Random random) {
        Document one = open.remove(random.nextInt(open.size()));
        transaction.executeWithoutResult(
                state -> books.remove(books.find(Document.class, one.id()).orElseThrow()));
    }

    /** Stands for another calculation: the same documents come to other postings. */
    private void other() {
        jdbc.sql("update shop set costing_method = case costing_method when 'FIFO' then 'AVERAGE' else 'FIFO' end")
                .update();
        books.rederive();
    }

    private void record(Document document) {
        recordAll(List.of(document));
    }

    private void recordAll(List<? extends Document> documents) {
        books.recordAll(documents);
        open.addAll(documents);
    }

    private BenchEntry use(LocalDate day, UUID supply, boolean byEye) {
        UUID piece = pieces.get(0);
        return new BenchEntry(
                id(),
                new BenchContent(
                        day,
                        "",
                        10,
                        "",
                        List.of(new BenchPiece(piece, false)),
                        List.of(new SupplyUse(1, supply, "a dab", new BigDecimal("7.5"), byEye)),
                        List.of(new UsePiece(1, piece, BigDecimal.ONE)),
                        List.of()));
    }

    private Receipt bought(LocalDate day, UUID supply, BigDecimal content) {
        ReceiptLine line = new ReceiptLine(
                1, LineKind.SUPPLY, "", BigDecimal.ONE, Amount.of(1234), null, null, false, supply, content, null);
        Tender paid = new Tender(1, Way.PLACE, cash, Amount.of(1234));
        return new Receipt(
                id(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        Amount.of(1234),
                        List.of(line),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(paid)));
    }

    private Sale sale(LocalDate day) {
        List<SaleLine> lines =
                List.of(new SaleLine(1, "Lesson", BigDecimal.ONE, Amount.of(900), Amount.ZERO, null, null));
        SaleContent draft = sale(day, lines, List.of());
        return new Sale(
                id(),
                sale(
                        day,
                        lines,
                        List.of(new Tender(1, Way.PLACE, cash, draft.sums().due()))));
    }

    private SaleContent sale(LocalDate day, List<SaleLine> lines, List<Tender> paid) {
        return new SaleContent(
                day,
                "",
                stall,
                "",
                "",
                Amount.ZERO,
                Amount.ZERO,
                Amount.of(77),
                false,
                Amount.of(25),
                cash,
                null,
                lines,
                List.of(),
                paid,
                List.of());
    }

    private void page(String path, String says) throws Exception {
        mvc.perform(get(path).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(says)))
                .andExpect(content().string(not(containsString("??"))));
    }

    private List<Map<String, Object>> rows() {
        return jdbc.sql("select * from posting where doc_date < ? order by document_id, line")
                .param(NEXT)
                .query()
                .listOfRows();
    }

    private List<Map<String, Object>> all() {
        return jdbc.sql("select * from posting order by document_id, line")
                .query()
                .listOfRows();
    }

    private static UUID id() {
        return UUID.randomUUID();
    }

    private static List<UUID> ids(int number) {
        return Stream.generate(UUID::randomUUID).limit(number).toList();
    }
}
