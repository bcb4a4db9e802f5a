package patinary.yearfolder;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.buying.ChargeKind;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptCharge;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.buying.ReceiptPiece;
import patinary.ledger.Books;
import patinary.ledger.StockPlace;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.opening.Opening;
import patinary.pieces.LettingGo;
import patinary.pieces.NewPieces;
import patinary.selling.Payout;
import patinary.selling.Postage;
import patinary.selling.Refund;
import patinary.selling.RefundContent;
import patinary.selling.RefundLine;
import patinary.selling.Sale;
import patinary.selling.SaleContent;
import patinary.selling.SaleLine;
import patinary.selling.SalePiece;
import patinary.selling.Wrap;
import patinary.spending.Expense;
import patinary.spending.OtherIncome;
import patinary.spending.Trip;
import patinary.supplies.SupplyCount;

/** Types the documents of docs/handbook/sample-year.md into the books. Everything is invented. */
final class SampleYear {

    private static final BigDecimal ONE = BigDecimal.ONE;
    private static final UUID OPENING = UUID.fromString("6f70656e-696e-4700-8000-000000000001");

    private final JdbcClient jdbc;
    private final Books books;
    private final NewPieces newPieces;
    private final UUID cash = UUID.randomUUID();
    private final UUID balance = UUID.randomUUID();
    private final UUID stall = UUID.randomUUID();
    private final UUID webShop = UUID.randomUUID();
    private final UUID paint = UUID.randomUUID();
    private final UUID paper = UUID.randomUUID();
    private final UUID boxes = UUID.randomUUID();

    private SampleYear(ApplicationContext program) {
        jdbc = program.getBean(JdbcClient.class);
        books = program.getBean(Books.class);
        newPieces = program.getBean(NewPieces.class);
    }

    static void type(ApplicationContext program) {
        SampleYear year = new SampleYear(program);
        year.names();
        UUID mirror = year.piece("Mirror");
        year.books.record(new Opening(
                OPENING,
                new Opening.Content(
                        day(1, 1),
                        "",
                        null,
                        null,
                        List.of(new Opening.OpeningPiece(mirror, cents(900), true)),
                        List.of(),
                        List.of())));
        year.buyAndWork();
        year.sellTheRest();
    }

    private void names() {
        UUID line = UUID.randomUUID();
        jdbc.sql("insert into money_place (id, name, kind, version) values (?, 'Cash box', 'CASH', 0),"
                        + " (?, 'Balance', 'CHANNEL', 0)")
                .params(cash, balance)
                .update();
        jdbc.sql("insert into channel (id, name, money_place_id, passes_tax, version) values (?, 'Stall', ?, false, 0),"
                        + " (?, 'Web shop', ?, false, 0)")
                .params(stall, cash, webShop, balance)
                .update();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Bench things', 'invented', 0)")
                .param(line)
                .update();
        supply(paint, line, "Paint", "VOLUME");
        supply(paper, line, "Paper", "COUNT");
        supply(boxes, line, "Boxes", "COUNT");
    }

    private void supply(UUID id, UUID line, String name, String dimension) {
        jdbc.sql("insert into supply (id, supply_line_id, name, dimension, version) values (?, ?, ?, ?, 0)")
                .params(id, line, name, dimension)
                .update();
    }

    private UUID piece(String title) {
        return newPieces.create(title, null, null);
    }

    private void buyAndWork() {
        UUID tray = piece("Tray");
        UUID stool = piece("Stool");
        books.record(new Trip(
                UUID.randomUUID(),
                day(1, 5),
                "",
                "Estate sale",
                "Home",
                "Invented Lane",
                BigDecimal.valueOf(20),
                700,
                null));
        receipt(
                day(1, 5),
                List.of(
                        line(1, LineKind.PIECES, 1, 1200, null, null, null),
                        line(2, LineKind.PIECES, 1, 1800, null, null, null),
                        line(3, LineKind.SUPPLY, 1, 1000, paint, 200, null),
                        line(4, LineKind.HOME, 1, 500, null, null, null)),
                List.of(new ReceiptPiece(1, tray, ONE), new ReceiptPiece(2, stool, ONE)),
                List.of(new ReceiptCharge(1, ChargeKind.TAX, "Tax", null, cents(225), false, false)));
        receipt(
                day(1, 10),
                List.of(
                        line(1, LineKind.SUPPLY, 4, 200, paper, 1, null),
                        line(2, LineKind.SUPPLY, 5, 100, boxes, 1, null),
                        line(3, LineKind.EXPENSE, 1, 600, null, null, "small_tools")),
                List.of(),
                List.of());
        books.record(new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day(1, 20),
                        "",
                        90,
                        "Painted",
                        List.of(new BenchPiece(tray, true), new BenchPiece(stool, true)),
                        List.of(
                                new SupplyUse(1, paint, "by eye", BigDecimal.valueOf(40), true),
                                new SupplyUse(2, paper, "1 sheet", ONE, false),
                                new SupplyUse(3, paint, "by eye", BigDecimal.valueOf(100), true)),
                        List.of(new UsePiece(1, tray, ONE), new UsePiece(2, tray, ONE), new UsePiece(3, stool, ONE)),
                        List.of())));
        books.record(new Expense(UUID.randomUUID(), day(2, 1), "", "booth_rent", "Invented market", cash, cents(1500)));
        UUID sold = sale(
                day(2, 8), webShop, balance, tray, 6000, 800, 340, List.of(new Wrap(1, boxes, "1 box", ONE, false)));
        books.record(new Postage(UUID.randomUUID(), day(2, 9), "", sold, cash, cents(720), Amount.ZERO, false));
        books.record(new Refund(
                UUID.randomUUID(),
                new RefundContent(
                        day(2, 15),
                        "A scratch",
                        sold,
                        Way.PLACE,
                        balance,
                        Amount.ZERO,
                        Amount.ZERO,
                        Amount.ZERO,
                        null,
                        List.of(new RefundLine(1, tray, null, null, cents(1000), false)))));
        sale(day(3, 1), stall, cash, stool, 8000, 0, 0, List.of());
    }

    private void sellTheRest() {
        UUID chair = piece("Chair A");
        UUID vase = piece("Vase");
        receipt(
                day(3, 10),
                List.of(
                        line(1, LineKind.PIECES, 1, 3000, null, null, null),
                        line(2, LineKind.PIECES, 1, 600, null, null, null)),
                List.of(
                        new ReceiptPiece(1, chair, ONE),
                        new ReceiptPiece(1, piece("Chair B"), ONE),
                        new ReceiptPiece(2, vase, ONE)),
                List.of());
        books.record(new LettingGo(UUID.randomUUID(), day(3, 20), "", vase, LettingGo.Reason.KEPT));
        books.record(new Payout(UUID.randomUUID(), day(3, 31), "", balance, cash, cents(5435), cents(25)));
        books.record(new OtherIncome(UUID.randomUUID(), day(5, 10), "", "Lesson", "A learner", cash, cents(2500)));
        books.record(
                new SupplyCount(UUID.randomUUID(), day(6, 30), "", paint, StockPlace.BENCH, BigDecimal.valueOf(40)));
        sale(day(11, 8), stall, cash, chair, 4500, 0, 0, List.of());
    }

    private UUID sale(
            LocalDate day,
            UUID channel,
            UUID place,
            UUID piece,
            long price,
            long shipping,
            long fee,
            List<Wrap> wraps) {
        UUID id = UUID.randomUUID();
        books.record(new Sale(
                id,
                new SaleContent(
                        day,
                        "",
                        channel,
                        "",
                        "",
                        Amount.ZERO,
                        cents(shipping),
                        Amount.ZERO,
                        false,
                        cents(fee),
                        fee == 0 ? null : place,
                        null,
                        List.of(new SaleLine(1, "", ONE, cents(price), Amount.ZERO, null, null)),
                        List.of(new SalePiece(1, piece, ONE)),
                        List.of(new Tender(1, Way.PLACE, place, cents(price + shipping))),
                        wraps)));
        return id;
    }

    private void receipt(
            LocalDate day, List<ReceiptLine> lines, List<ReceiptPiece> pieces, List<ReceiptCharge> charges) {
        Amount total = new ReceiptContent(
                        day, "", null, null, Amount.ZERO, lines, pieces, charges, List.of(), List.of())
                .sums()
                .total();
        books.record(new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        total,
                        lines,
                        pieces,
                        charges,
                        List.of(),
                        List.of(new Tender(1, Way.PLACE, cash, total)))));
    }

    private static ReceiptLine line(
            int line,
            LineKind kind,
            int quantity,
            long price,
            @Nullable UUID supply,
            @Nullable Integer content,
            @Nullable String category) {
        return new ReceiptLine(
                line,
                kind,
                "",
                BigDecimal.valueOf(quantity),
                cents(price),
                null,
                null,
                false,
                supply,
                content == null ? null : BigDecimal.valueOf(content),
                category);
    }

    private static Amount cents(long cents) {
        return Amount.of(cents);
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2025, month, day);
    }
}
