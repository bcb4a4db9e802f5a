package patinary.whole;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.Handling;
import patinary.bench.Pot;
import patinary.bench.PotPiece;
import patinary.bench.PotUse;
import patinary.bench.SheetCut;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.bench.UsePot;
import patinary.buying.ChargeKind;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptCharge;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.buying.ReceiptPiece;
import patinary.ledger.Document;
import patinary.ledger.StockPlace;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.Shares;
import patinary.pieces.LettingGo;
import patinary.selling.Refund;
import patinary.selling.RefundContent;
import patinary.selling.RefundLine;
import patinary.selling.Sale;
import patinary.selling.SaleContent;
import patinary.selling.SaleLine;
import patinary.selling.SalePiece;
import patinary.selling.Wrap;
import patinary.spending.TillCount;
import patinary.supplies.SupplyCount;
import patinary.supplies.Taking;

/** Random histories of real documents that can all be true together; the same seed gives the same history. */
public final class RandomShop {

    /** What the documents speak of; it must be stored before them. */
    public record Things(
            UUID cash,
            UUID channel,
            List<UUID> supplies,
            List<UUID> pieces,
            List<UUID> pots,
            @Nullable UUID bundle) {

        /** A shop that never keeps what is left of a pot, and sells no bundles. */
        public Things(UUID cash, UUID channel, List<UUID> supplies, List<UUID> pieces) {
            this(cash, channel, supplies, pieces, List.of(), null);
        }
    }

    private static final LocalDate START = LocalDate.of(2025, 1, 1);
    private static final BigDecimal ONE = BigDecimal.ONE;

    private final Random random;
    private final Things things;
    private final List<Document> documents = new ArrayList<>();

    private RandomShop(long seed, Things things) {
        this.random = new Random(seed);
        this.things = things;
    }

    public static List<Document> history(long seed, Things things) {
        RandomShop shop = new RandomShop(seed, things);
        shop.buy();
        shop.work();
        shop.sell();
        return shop.documents;
    }

    private void buy() {
        List<UUID> pieces = things.pieces();
        int half = pieces.size() / 2;
        documents.add(receipt(day(0, 20), pieces.subList(0, half)));
        documents.add(receipt(day(0, 20), pieces.subList(half, pieces.size())));
        documents.add(receipt(day(10, 60), List.of()));
    }

    private void work() {
        for (int i = 0; i < 4; i++) {
            documents.add(bench(day(5, 50)));
        }
        documents.add(new SupplyCount(id(), day(30, 70), "", supply(), StockPlace.BENCH, quantity(150))
                .asWaste(random.nextInt(3) == 0));
        documents.add(new Taking(id(), day(10, 60), "", supply(), quantity(40), random.nextBoolean())
                .asExpense(random.nextInt(3) == 0));
        if (!things.pots().isEmpty() && random.nextInt(3) == 0) {
            things.pots().forEach(this::mix);
        }
    }

    /** A pot with a cup, kept, and used on a day that may even lie before; the second may be made with some of the first. */
    private void mix(UUID pot) {
        int made = things.pots().indexOf(pot);
        BigDecimal rest = quantity(30);
        List<UUID> pieces = things.pieces();
        List<SupplyUse> uses = List.of(
                new SupplyUse(1, supply(), "in the pot", quantity(60), random.nextBoolean()),
                new SupplyUse(
                        2,
                        made > 0 && random.nextBoolean() ? things.pots().get(0) : supply(),
                        "in it too",
                        quantity(20),
                        random.nextBoolean()),
                new SupplyUse(3, supply(), "in the cup", quantity(10), false));
        List<UsePiece> on = List.of(
                new UsePiece(1, pieces.get(0), quantity(50)),
                new UsePiece(1, pieces.get(1), quantity(50)),
                new UsePiece(2, pieces.get(0), quantity(50)),
                new UsePiece(3, pieces.get(1), quantity(5)));
        List<UsePot> aside = List.of(new UsePot(1, pot, quantity(30)), new UsePot(2, pot, quantity(30)));
        Handling handling = new Handling(
                List.of(new SheetCut(3, SheetCut.Kind.SIZE, "", ONE, ONE, 1)),
                List.of(
                        new Pot(1, "", null, BigDecimal.ZERO, quantity(9), rest.add(quantity(90)), rest, pot, null),
                        new Pot(2, "", 1, quantity(9), BigDecimal.ZERO, quantity(9), BigDecimal.ZERO, null, null)),
                List.of(new PotPiece(1, pieces.get(0), ONE), new PotPiece(2, pieces.get(1), ONE)),
                List.of(new PotUse(1, 1), new PotUse(2, 1)),
                aside);
        documents.add(new BenchEntry(
                id(), new BenchContent(day(5, 50), "", 30, "", List.of(), uses, on, List.of(), handling)));
        documents.add(new BenchEntry(
                id(),
                new BenchContent(
                        day(5, 60),
                        "",
                        30,
                        "",
                        List.of(),
                        List.of(new SupplyUse(1, pot, "of the pot", quantity(20), random.nextBoolean())),
                        List.of(new UsePiece(1, pieces.get(2), ONE)),
                        List.of())));
        documents.add(new SupplyCount(id(), day(20, 70), "", pot, StockPlace.BENCH, quantity(20)));
    }

    /** Pieces come in by day 20 and leave from day 25 on, so that none is sold before it was there. */
    private void sell() {
        List<UUID> pieces = new ArrayList<>(things.pieces());
        Collections.shuffle(pieces, random);
        LocalDate sold = day(25, 40);
        UUID sale = id();
        documents.add(sale(sale, sold, pieces.subList(0, 2)));
        if (random.nextBoolean()) {
            documents.add(refund(sale, sold.plusDays(1 + random.nextInt(10)), pieces.get(0)));
        }
        documents.add(sale(id(), day(25, 60), List.of(pieces.get(2))));
        cancelled(pieces.get(2), pieces.get(4));
        consigned(pieces.get(5));
        LettingGo.Reason reason = LettingGo.Reason.values()[random.nextInt(LettingGo.Reason.values().length)];
        documents.add(new LettingGo(id(), day(25, 70), "", pieces.get(3), reason));
        documents.add(new TillCount(id(), day(0, 40), "", things.cash(), money(20_000)));
        documents.add(new TillCount(id(), day(30, 80), "", things.cash(), money(20_000)));
        UUID bundle = things.bundle();
        if (bundle != null) {
            bundles(bundle);
        }
    }

    /** An order for a piece that another sale has on whatever day, perhaps with one that it gets; what it paid for the first goes back. */
    private void cancelled(UUID never, UUID perhaps) {
        UUID order = id();
        LocalDate day = day(25, 60);
        List<UUID> wanted = random.nextBoolean() ? List.of(never, perhaps) : List.of(never);
        documents.add(new Sale(order, sale(order, day, wanted).content().withoutDelivering(List.of(never))));
        documents.add(refund(
                order, day.plusDays(random.nextInt(5)), new RefundLine(1, never, null, null, money(9000), false)));
    }

    /** A piece whose owner gets a part; perhaps it comes back. */
    private void consigned(UUID piece) {
        UUID first = id();
        LocalDate day = day(25, 40);
        Sale sale = sale(first, day, List.of(piece));
        Map<UUID, Amount> shares = Map.of(piece, money(4000));
        documents.add(new Sale(first, sale.content().owingOwners(shares)));
        if (random.nextBoolean()) {
            RefundLine back = new RefundLine(1, piece, null, null, money(2000), true).noLongerOwing(shares.get(piece));
            documents.add(refund(first, day.plusDays(1), back));
        }
    }

    /** Bundles, and one of the supplies by itself; then parts of them are sent back, to the shelf or to be thrown away. */
    private void bundles(UUID bundle) {
        LocalDate sold = day(15, 60);
        UUID sale = id();
        BigDecimal number = BigDecimal.valueOf(1 + random.nextInt(3));
        SaleLine.OfBundle of = new SaleLine.OfBundle(bundle, 1, "Starter set");
        List<Amount> prices = Shares.split(
                money(9000), things.supplies().stream().map(s -> quantity(9)).toList());
        List<SaleLine> lines = new ArrayList<>();
        for (int i = 0; i < prices.size(); i++) {
            UUID part = things.supplies().get(i);
            lines.add(new SaleLine(i + 1, "", number, prices.get(i), Amount.ZERO, part, quantity(20), of));
        }
        UUID single = supply();
        lines.add(new SaleLine(lines.size() + 1, "", number, money(900), Amount.ZERO, single, quantity(20)));
        SaleContent draft = sale(sold, lines, List.of(), List.of(), money(800), money(500));
        Tender paid = new Tender(1, Way.PLACE, things.cash(), draft.sums().due());
        documents.add(new Sale(sale, sale(sold, lines, List.of(), List.of(paid), draft.shipping(), draft.fee())));
        for (int i = 0; i < lines.size(); i += 2) {
            BigDecimal half = lines.get(i).supplyQuantity().divide(BigDecimal.valueOf(2), 2, RoundingMode.DOWN);
            RefundLine back = new RefundLine(
                    1,
                    null,
                    lines.get(i).supplyId(),
                    half.max(new BigDecimal("0.01")),
                    money(100),
                    i % 4 == 0,
                    i % 4 != 0);
            documents.add(refund(sale, sold.plusDays(1 + random.nextInt(10)), back));
        }
    }

    private Receipt receipt(LocalDate date, List<UUID> pieces) {
        List<ReceiptLine> lines = new ArrayList<>();
        List<ReceiptPiece> of = new ArrayList<>();
        if (!pieces.isEmpty()) {
            lines.add(line(1, LineKind.PIECES, null, null));
            pieces.forEach(piece -> of.add(new ReceiptPiece(1, piece, quantity(9))));
        }
        for (UUID supply : things.supplies()) {
            LineKind kind = random.nextInt(3) == 0 ? LineKind.SHELF : LineKind.SUPPLY;
            lines.add(line(lines.size() + 1, kind, supply, quantity(200)));
        }
        lines.add(line(lines.size() + 1, LineKind.HOME, null, null));
        lines.add(line(lines.size() + 1, LineKind.CHARITY, null, null));
        List<ReceiptCharge> charges = List.of(
                new ReceiptCharge(1, ChargeKind.DISCOUNT, "", Percent.of("12.5"), null, false, random.nextBoolean()),
                new ReceiptCharge(2, ChargeKind.TAX, "", Percent.of("8.25"), null, false, false),
                new ReceiptCharge(3, ChargeKind.SHIPPING, "", null, money(900), random.nextBoolean(), false));
        ReceiptContent draft =
                new ReceiptContent(date, "", null, null, Amount.ZERO, lines, of, charges, List.of(), List.of());
        Amount total = draft.sums().total();
        List<Tender> paid = List.of(new Tender(1, Way.PLACE, things.cash(), total));
        return new Receipt(id(), new ReceiptContent(date, "", null, null, total, lines, of, charges, List.of(), paid));
    }

    private ReceiptLine line(int number, LineKind kind, @Nullable UUID supply, @Nullable BigDecimal content) {
        BigDecimal quantity = BigDecimal.valueOf(1 + random.nextInt(3));
        return new ReceiptLine(
                number, kind, "", quantity, money(3000), null, null, random.nextBoolean(), supply, content, null);
    }

    private BenchEntry bench(LocalDate date) {
        List<BenchPiece> worked = new ArrayList<>();
        List<UsePiece> shares = new ArrayList<>();
        for (UUID piece : things.pieces()) {
            if (random.nextBoolean()) {
                worked.add(new BenchPiece(piece, random.nextBoolean()));
                shares.add(new UsePiece(1, piece, quantity(5)));
            }
        }
        List<SupplyUse> uses = List.of(
                new SupplyUse(
                        1, supply(), "by eye", quantity(80), random.nextBoolean(), random.nextInt(3) == 0 ? ONE : null),
                new SupplyUse(2, supply(), "a sample", quantity(10), random.nextBoolean()));
        return new BenchEntry(
                id(), new BenchContent(date, "", random.nextInt(120), "", worked, uses, shares, List.of()));
    }

    private Sale sale(UUID id, LocalDate date, List<UUID> pieces) {
        List<SaleLine> lines = List.of(new SaleLine(1, "", ONE, money(9000), Amount.ZERO, null, null));
        List<SalePiece> of = pieces.stream()
                .map(piece -> new SalePiece(1, piece, quantity(7)))
                .toList();
        SaleContent draft = sale(date, lines, of, List.of(), money(800), money(500));
        Tender paid = new Tender(1, Way.PLACE, things.cash(), draft.sums().due());
        SaleContent sale = sale(date, lines, of, List.of(paid), draft.shipping(), draft.fee());
        return new Sale(id, sale.packedIn(wraps()));
    }

    private SaleContent sale(
            LocalDate date, List<SaleLine> lines, List<SalePiece> of, List<Tender> paid, Amount shipping, Amount fee) {
        return new SaleContent(
                date,
                "",
                things.channel(),
                "",
                "",
                Amount.ZERO,
                shipping,
                Amount.of(77),
                false,
                fee,
                things.cash(),
                null,
                lines,
                of,
                paid,
                List.of());
    }

    /** What a parcel may hold: nothing, a supply counted out, and one by eye, perhaps before it was ever bought. */
    private List<Wrap> wraps() {
        return List.of(
                        new Wrap(1, supply(), "1 box", quantity(20), false),
                        new Wrap(2, supply(), "some tape", quantity(20), true))
                .subList(0, random.nextInt(3));
    }

    private Refund refund(UUID sale, LocalDate date, UUID piece) {
        return refund(sale, date, new RefundLine(1, piece, null, null, money(2000), true));
    }

    private Refund refund(UUID sale, LocalDate date, RefundLine line) {
        List<RefundLine> lines = List.of(line);
        return new Refund(
                id(),
                new RefundContent(
                        date, "", sale, Way.PLACE, things.cash(), Amount.ZERO, Amount.ZERO, Amount.ZERO, null, lines));
    }

    private UUID id() {
        return new UUID(random.nextLong(), random.nextLong());
    }

    private LocalDate day(int from, int to) {
        return START.plusDays(from + random.nextInt(to - from));
    }

    private UUID supply() {
        return things.supplies().get(random.nextInt(things.supplies().size()));
    }

    private Amount money(int most) {
        return Amount.of(1 + random.nextInt(most));
    }

    private BigDecimal quantity(int most) {
        return BigDecimal.valueOf(1 + random.nextInt(most * 100), 2);
    }
}
