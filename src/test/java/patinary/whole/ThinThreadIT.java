package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
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
import patinary.ledger.Check;
import patinary.ledger.Problem;
import patinary.ledger.Refused;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.pieces.NewPieces;
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.selling.FeeRule;
import patinary.selling.Offer;
import patinary.selling.Sale;
import patinary.selling.SaleContent;
import patinary.selling.SaleLine;
import patinary.selling.SalePiece;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;
import patinary.taxyear.YearSeal;
import patinary.testing.ShopTest;

/**
 * One thread through everything, with figures worked by hand: a receipt with a box and a jar of paint, an hour at the
 * bench, an offer, a sale.
 *
 * <p>Receipt: box 10.00, jar of 200 ml 20.00, tax 8 % on both = 2.40, shared by net 0.80 and 1.60; landed 10.80 and
 * 21.60. Use: 50 ml of 200 ml = 5.40. Landed cost of the box 16.20. Sale: 45.00 + 6.00 shipping, fee 10 % + 0.30 = 5.40;
 * profit 45.00 + 6.00 - 5.40 - 16.20 = 29.40.
 */
@ShopTest
class ThinThreadIT {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);
    private static final BigDecimal ONE = BigDecimal.ONE;

    @Autowired
    private Books books;

    @Autowired
    private Check check;

    @Autowired
    private NewPieces newPieces;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private SupplyLines supplyLines;

    @Autowired
    private Supplies supplies;

    @Autowired
    private Channels channels;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcClient jdbc;

    private final UUID cash = UUID.randomUUID();
    private final UUID channel = UUID.randomUUID();
    private final UUID paint = UUID.randomUUID();
    private UUID box = new UUID(0, 0);

    @BeforeEach
    void stockTheShop() {
        places.save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
        UUID line = UUID.randomUUID();
        supplyLines.save(new SupplyLine(line, "Chalk paints", "an invented maker"));
        supplies.save(new Supply(
                paint, new Supply.Facts(line, "Pond green", Dimension.VOLUME, null, null, List.of(), List.of())));
        channels.save(new Channel(
                channel,
                "Web shop",
                cash,
                false,
                List.of(new FeeRule(LocalDate.of(2025, 1, 1), Percent.of("10"), Amount.of(30)))));
        box = newPieces.create("Small oak box", null, null);
    }

    @Test
    void everyCentHasAPlaceFromTheReceiptToTheProfit() {
        books.record(receipt(DAY));
        books.record(work(DAY.plusDays(1)));
        books.record(offer(DAY.plusDays(2)));
        books.record(sale(UUID.randomUUID(), DAY.plusDays(9)));

        assertThat(figures())
                .containsEntry("purchase_minor", 1080L)
                .containsEntry("supplies_minor", 540L)
                .containsEntry("landed_minor", 1620L)
                .containsEntry("in_stock_minor", 0L)
                .containsEntry("cost_minor", 1620L)
                .containsEntry("fees_minor", 540L)
                .containsEntry("profit_minor", 2940L);
        assertThat(balances())
                .containsEntry("MONEY", -3240L + 5100 - 540)
                .containsEntry("BENCH", 1620L)
                .containsEntry("PIECES", 0L)
                .containsEntry("COST_OF_PIECES", 1620L)
                .containsEntry("SALES", -4500L)
                .containsEntry("SHIPPING_CHARGED", -600L)
                .containsEntry("FEES", 540L);
        assertThat(balances().values().stream().mapToLong(Long::longValue).sum())
                .isZero();
        assertThat(state()).isEqualTo("SOLD");
    }

    @Test
    void aReceiptTypedAfterTheUseCostsTheUseOnItsOwnDay() {
        books.record(work(DAY.minusDays(5)));
        assertThat(jdbc.sql("select uncosted from piece_figures where piece_id = ?")
                        .param(box)
                        .query(Boolean.class)
                        .single())
                .isTrue();

        books.record(receipt(DAY));

        assertThat(figures()).containsEntry("supplies_minor", 540L).containsEntry("landed_minor", 1620L);
        assertThat(jdbc.sql("select min(doc_date) from posting where piece_id = ? and supply_id is not null")
                        .param(box)
                        .query(LocalDate.class)
                        .single())
                .isEqualTo(DAY);
    }

    @Test
    void aPieceIsSoldOnceAndTheRefusedSaleLeavesNothing() {
        books.record(receipt(DAY));
        books.record(sale(UUID.randomUUID(), DAY.plusDays(3)));
        Sale second = sale(UUID.randomUUID(), DAY.plusDays(4));

        assertThatThrownBy(() -> books.record(second))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::reason, Problem::subject)
                                .containsExactly(
                                        org.assertj.core.groups.Tuple.tuple(Problem.Reason.PIECE_ALREADY_GONE, box)));
        assertThat(jdbc.sql("select count(*) from sale").query(Long.class).single())
                .isEqualTo(1);
    }

    @Test
    void aSealedYearIsNeverRewrittenButItsOffersGoOn() {
        books.record(receipt(DAY));
        books.record(offer(DAY.plusDays(2)));
        books.record(new YearSeal(UUID.randomUUID(), LocalDate.of(2025, 12, 31), "", 2025, "", 1));

        assertThatThrownBy(() -> books.record(work(DAY.plusDays(1)))).isInstanceOf(Refused.class);
        UUID offer = jdbc.sql("select id from offer").query(UUID.class).single();
        inTransaction(offer, open -> books.continued(open, LocalDate.of(2026, 1, 5)));
        assertThatThrownBy(() -> inTransaction(offer, open -> books.continued(open, LocalDate.of(2025, 12, 31))))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> inTransaction(offer, books::changed)).isInstanceOf(Refused.class);
    }

    private void inTransaction(UUID offer, Consumer<Offer> step) {
        transaction.executeWithoutResult(
                state -> step.accept(books.find(Offer.class, offer).orElseThrow()));
    }

    @Test
    void whatAnotherCostingMethodWouldMakeOfASealedYearIsPostedOnTheFirstOpenDay() {
        books.record(receipt(DAY));
        books.record(receipt(DAY.plusDays(1), box2(), 3000));
        books.record(work(DAY.plusDays(2)));
        UUID seal = UUID.randomUUID();
        books.record(new YearSeal(seal, LocalDate.of(2025, 12, 31), "", 2025, "", 1));
        List<Map<String, Object>> sealed = rows();

        jdbc.sql("update shop set costing_method = 'AVERAGE'").update();
        books.rederive();

        List<Map<String, Object>> after = rows();
        assertThat(after).containsAll(sealed).hasSizeGreaterThan(sealed.size());
        assertThat(jdbc.sql("select distinct doc_date from posting where document_id = ?")
                        .param(seal)
                        .query(LocalDate.class)
                        .list())
                .containsExactly(LocalDate.of(2026, 1, 1));
        assertThat(check.run()).isEmpty();

        jdbc.sql("update shop set costing_method = 'FIFO'").update();
        books.rederive();
        assertThat(rows()).as("nothing differs any more").isEqualTo(sealed);
    }

    private UUID box2() {
        return newPieces.create("Another box", null, null);
    }

    private List<Map<String, Object>> rows() {
        return jdbc.sql("select document_id, line, amount_minor from posting order by document_id, line")
                .query()
                .listOfRows();
    }

    @Test
    void thePieceIsFoundThenOnTheBenchThenReadyThenOnOffer() {
        books.record(receipt(DAY));
        assertThat(state()).isEqualTo("FOUND");
        books.record(work(DAY.plusDays(1)));
        assertThat(state()).isEqualTo("READY");
        books.record(offer(DAY.plusDays(2)));
        assertThat(state()).isEqualTo("OFFERED");
    }

    private Receipt receipt(LocalDate day) {
        return receipt(day, box, 2000);
    }

    /** A box for 10.00 and a jar at a price, with 8 % tax on both. */
    private Receipt receipt(LocalDate day, UUID piece, long jar) {
        Amount total = Amount.of((1000 + jar) * 108 / 100);
        return new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        total,
                        List.of(
                                new ReceiptLine(
                                        1,
                                        LineKind.PIECES,
                                        "Oak box",
                                        ONE,
                                        Amount.of(1000),
                                        null,
                                        null,
                                        false,
                                        null,
                                        null,
                                        null),
                                new ReceiptLine(
                                        2,
                                        LineKind.SUPPLY,
                                        "Pond green",
                                        ONE,
                                        Amount.of(jar),
                                        null,
                                        null,
                                        false,
                                        paint,
                                        BigDecimal.valueOf(200),
                                        null)),
                        List.of(new ReceiptPiece(1, piece, ONE)),
                        List.of(new ReceiptCharge(1, ChargeKind.TAX, "Tax", Percent.of("8"), null, false, false)),
                        List.of(),
                        List.of(new Tender(1, Way.PLACE, cash, total))));
    }

    private BenchEntry work(LocalDate day) {
        return new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day,
                        "",
                        60,
                        "Two coats",
                        List.of(new BenchPiece(box, true)),
                        List.of(new SupplyUse(1, paint, "50 ml", BigDecimal.valueOf(50), true)),
                        List.of(new UsePiece(1, box, ONE)),
                        List.of()));
    }

    private Offer offer(LocalDate day) {
        return new Offer(
                UUID.randomUUID(),
                new Offer.Content(
                        day,
                        "",
                        "Pond green box",
                        null,
                        null,
                        List.of(new Offer.OfferedPiece(box, ONE)),
                        List.of(channel),
                        List.of(new Offer.Price(day, Amount.of(4500))),
                        List.of()));
    }

    private Sale sale(UUID id, LocalDate day) {
        return new Sale(
                id,
                new SaleContent(
                        day,
                        "",
                        channel,
                        "",
                        "",
                        Amount.ZERO,
                        Amount.of(600),
                        Amount.ZERO,
                        false,
                        Amount.of(540),
                        cash,
                        null,
                        List.of(new SaleLine(1, "Box", ONE, Amount.of(4500), Amount.ZERO, null, null)),
                        List.of(new SalePiece(1, box, ONE)),
                        List.of(new Tender(1, Way.PLACE, cash, Amount.of(5100))),
                        List.of()));
    }

    private Map<String, Object> figures() {
        return jdbc.sql("select * from piece_figures where piece_id = ?")
                .param(box)
                .query()
                .singleRow();
    }

    private Map<String, Long> balances() {
        Map<String, Long> result = new java.util.TreeMap<>();
        jdbc.sql("select account, sum(amount_minor) as balance from posting group by account")
                .query(row -> {
                    result.put(row.getString("account"), row.getLong("balance"));
                });
        return result;
    }

    private String state() {
        return jdbc.sql("select state from piece_state where piece_id = ?")
                .param(box)
                .query(String.class)
                .single();
    }
}
