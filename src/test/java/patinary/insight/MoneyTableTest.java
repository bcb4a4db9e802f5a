package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import patinary.insight.MoneyFacts.PieceSale;
import patinary.money.Amount;
import patinary.money.Percent;

/** The worked example of docs/handbook/money-by-group.md, and sums that must hold for any pieces. All figures are invented. */
class MoneyTableTest {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 12);
    private static final UUID BOX = new UUID(0, 1);
    private static final UUID TRAY = new UUID(0, 2);
    private static final UUID FRAME = new UUID(0, 3);

    private final MoneyFacts facts = new MoneyFacts(
            List.of(
                    sale(BOX, DAY, "Stall", false, parts(4500, 600, 540, 1620)),
                    sale(FRAME, DAY.plusDays(20), "Web shop", false, parts(3000, 0, 300, 1000))),
            List.of(
                    new StockOfPiece(BOX, new BigDecimal("18250"), Amount.ZERO, 40),
                    new StockOfPiece(TRAY, new BigDecimal("584000"), Amount.of(2000), 100),
                    new StockOfPiece(FRAME, new BigDecimal("9125"), Amount.ZERO, 30)),
            Map.of(BOX, new BigDecimal("90"), TRAY, new BigDecimal("30")));

    @Test
    void theWorkedExample() {
        Map<UUID, String> styles = Map.of(BOX, "Cottage", TRAY, "Cottage");
        MoneyTable table = MoneyTable.of(
                facts, MoneyTable.Grouping.ofPieces(piece -> List.of(styles.getOrDefault(piece, ""))), 365);
        MoneyRow cottage = table.rows().get(0);
        assertThat(cottage.name()).isEqualTo("Cottage");
        assertThat(cottage.profit()).isEqualTo(Amount.of(2940));
        assertThat(cottage.margin()).isEqualTo(Percent.of("57.6"));
        assertThat(cottage.returnOnCost()).isEqualTo(Percent.of("181.5"));
        assertThat(cottage.perHour()).isEqualTo(Amount.of(1960));
        assertThat(cottage.grossReturn()).as("34.80 on 16.50").isEqualByComparingTo("2.11");
        assertThat(cottage.turn()).as("16.20 of 16.50").isEqualByComparingTo("0.98");
        assertThat(cottage.tied()).isEqualTo(Amount.of(2000));
        assertThat(cottage.tiedDays()).isEqualByComparingTo("100");
        MoneyRow none = table.rows().get(1);
        assertThat(none.perHour()).as("no minutes").isNull();
        assertThat(none.tiedDays()).as("nothing lies there").isNull();
        assertThat(table.whole().profit()).isEqualTo(Amount.of(4640));
    }

    @Test
    void stockBelongsToNoChannel() {
        MoneyTable table = MoneyTable.of(facts, MoneyTable.Grouping.ofSales(PieceSale::channel), 365);
        assertThat(table.rows()).extracting(MoneyRow::name).containsExactly("Stall", "Web shop");
        assertThat(table.rows()).allSatisfy(row -> assertThat(row.tied()).isNull());
        assertThat(table.whole().tied()).isEqualTo(Amount.of(2000));
    }

    /** A profit of 29.40 over paint 4.00 and wax 2.00; the frame saw no supply; a third was touched by one without a cost. */
    @Test
    void profitIsSharedOverSupplyLines() {
        List<PieceSale> sales = new ArrayList<>(facts.sales());
        sales.add(sale(TRAY, DAY, "Stall", false, parts(100, 0, 0, 350)));
        LineShares shares = LineShares.of(
                sales, Map.of(BOX, Map.of("Paint", Amount.of(400), "Wax", Amount.of(200))), Set.of(BOX, TRAY));
        assertThat(shares.rows())
                .extracting(LineShares.Row::part, LineShares.Row::name, LineShares.Row::profit)
                .containsExactly(
                        tuple(LineShares.Part.LINE, "Paint", Amount.of(1960)),
                        tuple(LineShares.Part.LINE, "Wax", Amount.of(980)),
                        tuple(LineShares.Part.NO_SUPPLY, "", Amount.of(1700)),
                        tuple(LineShares.Part.NOT_ALLOTTED, "", Amount.of(-250)));
        assertThat(shares.total()).isEqualTo(Amount.of(4390));
    }

    @Property(tries = 200)
    void theSharesAddUpToTheCent(@ForAll long seed) {
        Random random = new Random(seed);
        List<PieceSale> sales = new ArrayList<>();
        Map<UUID, Map<String, Amount>> costs = new HashMap<>();
        for (int i = 0; i < random.nextInt(30); i++) {
            UUID piece = new UUID(1, random.nextInt(12));
            sales.add(sale(piece, DAY, "Stall", false, parts(random.nextInt(9000), 0, 100, random.nextInt(6000))));
            Map<String, Amount> lines = new TreeMap<>();
            for (int line = 0; line < random.nextInt(4); line++) {
                lines.put("Line " + random.nextInt(5), Amount.of(random.nextInt(700) - 100));
            }
            costs.put(piece, lines);
        }
        LineShares shares = LineShares.of(sales, costs, Set.of(new UUID(1, 3)));
        Amount profits = sales.stream().map(sale -> sale.parts().profit()).collect(Amount.sum());
        assertThat(shares.rows().stream().map(LineShares.Row::profit).collect(Amount.sum()))
                .isEqualTo(profits);
        assertThat(shares.total()).isEqualTo(profits);
    }

    @Property(tries = 100)
    void groupsOfPiecesAddUpToTheShop(@ForAll long seed) {
        Random random = new Random(seed);
        List<PieceSale> sales = new ArrayList<>();
        List<StockOfPiece> stock = new ArrayList<>();
        Map<UUID, BigDecimal> minutes = new HashMap<>();
        for (int i = 0; i < 20; i++) {
            UUID piece = new UUID(2, i);
            minutes.put(piece, BigDecimal.valueOf(random.nextInt(100)));
            stock.add(new StockOfPiece(piece, BigDecimal.valueOf(random.nextInt(9999)), Amount.of(i), i));
            if (random.nextBoolean()) {
                sales.add(sale(
                        piece,
                        DAY,
                        "Stall",
                        random.nextInt(5) == 0,
                        parts(random.nextInt(9000), 0, 9, 500),
                        random.nextInt(500)));
            }
        }
        MoneyTable table = MoneyTable.of(
                new MoneyFacts(sales, stock, minutes),
                MoneyTable.Grouping.ofPieces(piece -> List.of(String.valueOf(piece.getLeastSignificantBits() % 4))),
                365);
        MoneyRow whole = table.whole();
        assertThat(table.rows().stream().map(MoneyRow::profit).collect(Amount.sum()))
                .isEqualTo(whole.profit());
        assertThat(table.rows().stream().map(MoneyRow::tied).collect(Amount.sum()))
                .isEqualTo(whole.tied());
        assertThat(table.rows().stream().map(MoneyRow::minutes).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(whole.minutes());
        assertThat(table.rows().stream().mapToInt(MoneyRow::sold).sum()).isEqualTo(whole.sold());
        BeforeAfter beforeAfter = BeforeAfter.of(table);
        assertThat(beforeAfter.rows().stream().map(BeforeAfter.Row::paid).collect(Amount.sum()))
                .isEqualTo(beforeAfter.whole().paid());
        assertThat(beforeAfter.rows().stream().map(BeforeAfter.Row::back).collect(Amount.sum()))
                .isEqualTo(whole.profit().plus(whole.parts().cost()));
    }

    /** 45.00 and 6.00 less 5.40 and 16.20: each bar begins where the last one ended; 51.00 is 200 wide. */
    @Test
    void theFallFromPriceToProfit() {
        List<MoneyPictures.Step> steps = MoneyPictures.fall(parts(4500, 600, 540, 1620));
        assertThat(steps)
                .extracting(MoneyPictures.Step::key, MoneyPictures.Step::bar)
                .containsExactly(
                        tuple("price", new Bar(0, 176, 0, false)),
                        tuple("shipping", new Bar(176, 24, 0, false)),
                        tuple("refunds", new Bar(200, 0, 0, false)),
                        tuple("fees", new Bar(179, 21, 0, true)),
                        tuple("postage", new Bar(179, 0, 0, false)),
                        tuple("packaging", new Bar(179, 0, 0, false)),
                        tuple("cost", new Bar(115, 64, 0, true)),
                        tuple("profit", new Bar(0, 115, 0, false)));
    }

    /**
     * The box cost 10.20 and 6.00 of supplies, 45.60 came back; the frame cost 10.00 and nothing was used on it, 27.00 came back. The scale
     * goes to 45.60, which is 200 wide: 10.20 is 45, 16.20 is 71.
     */
    @Test
    void whatWasPutInAndWhatCameBack() {
        MoneyFacts sold = new MoneyFacts(
                List.of(
                        sale(BOX, DAY, "Stall", false, parts(4500, 600, 540, 1620), 600),
                        sale(FRAME, DAY, "Stall", false, parts(3000, 0, 300, 1000))),
                facts.stock(),
                Map.of());
        BeforeAfter table = BeforeAfter.of(MoneyTable.of(
                sold, MoneyTable.Grouping.ofPieces(piece -> List.of(piece.equals(BOX) ? "Boxes" : "Other")), 365));
        assertThat(table.rows()).extracting(BeforeAfter.Row::name).containsExactly("Boxes", "Other");
        BeforeAfter.Row boxes = table.rows().get(0);
        assertThat(boxes.paid()).isEqualTo(Amount.of(1020));
        assertThat(boxes.work()).isEqualTo(Amount.of(600));
        assertThat(boxes.back()).isEqualTo(Amount.of(4560));
        assertThat(boxes.profit()).isEqualTo(Amount.of(2940));
        assertThat(boxes.pair())
                .isEqualTo(new BeforeAfter.Pair(
                        new Bar(0, 45, 0, false), new Bar(45, 26, 0, false), new Bar(0, 200, 0, false)));
        assertThat(table.whole().paid()).isEqualTo(Amount.of(2020));
        assertThat(table.whole().back()).isEqualTo(Amount.of(7260));
    }

    /** Of a group that only lies in stock nothing came back yet; it is not drawn, and the number of a row stays that of the table. */
    @Test
    void whatHasNotSoldIsNotDrawn() {
        Map<UUID, String> names = Map.of(BOX, "A", TRAY, "B", FRAME, "C");
        MoneyTable table = MoneyTable.of(facts, MoneyTable.Grouping.ofPieces(piece -> List.of(names.get(piece))), 365);
        assertThat(BeforeAfter.of(table).rows())
                .allSatisfy(row -> assertThat(table.row(row.at()).name()).isEqualTo(row.name()))
                .extracting(BeforeAfter.Row::name)
                .containsExactly("A", "C");
    }

    /** 4.00 of supplies in 10.00 of landed cost: all of it with 10.00, 1.33 with 3.33, nothing where all of it came back. */
    @Test
    void theWorkIsAsMuchOfTheCostAsOfTheLandedCost() {
        assertThat(BeforeAfter.work(Amount.of(1000), Amount.of(400), Amount.of(1000)))
                .isEqualTo(Amount.of(400));
        assertThat(BeforeAfter.work(Amount.of(333), Amount.of(400), Amount.of(1000)))
                .isEqualTo(Amount.of(133));
        assertThat(BeforeAfter.work(Amount.ZERO, Amount.of(400), Amount.of(1000)))
                .isEqualTo(Amount.ZERO);
        assertThat(BeforeAfter.work(Amount.of(5), Amount.ZERO, Amount.ZERO)).isEqualTo(Amount.ZERO);
    }

    @Test
    void aMonthWithoutASaleIsShownToo() {
        List<MoneyPictures.Month> months =
                MoneyPictures.months(facts.sales(), LocalDate.of(2025, 2, 10), LocalDate.of(2025, 4, 30));
        assertThat(months)
                .extracting(month -> month.month().toString(), MoneyPictures.Month::profit)
                .containsExactly(
                        tuple("2025-02", Amount.ZERO),
                        tuple("2025-03", Amount.of(2940)),
                        tuple("2025-04", Amount.of(1700)));
        assertThat(months)
                .as("30.00 beside 51.00 of net sales")
                .extracting(month -> month.bar().wide())
                .containsExactly(0, 200, 118);
        MoneyRow whole = MoneyTable.of(facts, MoneyTable.Grouping.ofSales(PieceSale::channel), 365)
                .whole();
        assertThat(MoneyPictures.ages(whole).get(2).tied()).isEqualTo(Amount.of(2000));
    }

    /** The best sale first with what lay in it while it was there, then what lies there still; each minute and each day once. */
    @Test
    void thePiecesBehindARowSayAllThatItIsMadeOf() {
        MoneyRow whole = MoneyTable.of(facts, MoneyTable.Grouping.ofSales(PieceSale::channel), 365)
                .whole();
        assertThat(MoneyPieces.of(whole, facts.minutes()))
                .extracting(
                        MoneyPieces.Line::piece,
                        MoneyPieces.Line::wholeMinutes,
                        MoneyPieces.Line::tied,
                        MoneyPieces.Line::age,
                        MoneyPieces.Line::lay)
                .containsExactly(
                        tuple(BOX, 90L, null, null, Amount.of(18_250)),
                        tuple(FRAME, 0L, null, null, Amount.of(9_125)),
                        tuple(TRAY, null, Amount.of(2_000), 100L, Amount.of(584_000)));
    }

    private static PieceSale sale(UUID piece, LocalDate day, String channel, boolean cameBack, SaleParts parts) {
        return sale(piece, day, channel, cameBack, parts, 0);
    }

    private static PieceSale sale(
            UUID piece, LocalDate day, String channel, boolean cameBack, SaleParts parts, long work) {
        return new PieceSale(UUID.randomUUID(), piece, day, channel, cameBack, parts, Amount.of(work));
    }

    private static SaleParts parts(long price, long shipping, long fees, long cost) {
        return new SaleParts(
                Amount.of(price),
                Amount.of(shipping),
                Amount.ZERO,
                Amount.of(fees),
                Amount.ZERO,
                Amount.ZERO,
                Amount.of(cost));
    }
}
