package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.buying.ReceiptPiece;
import patinary.ledger.Books;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.pieces.NewPieces;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;

/**
 * Invented goods to sell: a tray that cost 8.00, a jug that cost 4.00, ten brushes on the retail shelf for 20.00; a
 * marketplace that keeps 10 % + 0.30 until the end of May and 12 % + 0.30 after, gathers the money itself and pays over
 * the sales tax; a stall with a cash box and no fee.
 */
class InventedGoods {

    static final LocalDate BOUGHT = LocalDate.of(2025, 2, 1);

    final UUID cash = UUID.randomUUID();
    final UUID bank = UUID.randomUUID();
    final UUID balance = UUID.randomUUID();
    final UUID market = UUID.randomUUID();
    final UUID stall = UUID.randomUUID();
    final UUID brushes = UUID.randomUUID();
    final UUID tray;
    final UUID jug;

    private final JdbcClient jdbc;

    InventedGoods(ApplicationContext program) {
        jdbc = program.getBean(JdbcClient.class);
        MoneyPlaces places = program.getBean(MoneyPlaces.class);
        Channels channels = program.getBean(Channels.class);
        NewPieces pieces = program.getBean(NewPieces.class);
        places.save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
        places.save(new MoneyPlace(bank, "Bank", MoneyPlace.Kind.BANK));
        places.save(new MoneyPlace(balance, "Marketplace balance", MoneyPlace.Kind.CHANNEL));
        channels.save(new Channel(
                market,
                "Marketplace",
                balance,
                true,
                List.of(
                        new FeeRule(LocalDate.of(2025, 1, 1), Percent.of("10"), Amount.of(30)),
                        new FeeRule(LocalDate.of(2025, 6, 1), Percent.of("12"), Amount.of(30)))));
        channels.save(new Channel(stall, "Stall", cash, false, List.of()));
        UUID line = UUID.randomUUID();
        program.getBean(SupplyLines.class).save(new SupplyLine(line, "Brushes", "an invented maker"));
        program.getBean(Supplies.class)
                .save(new Supply(
                        brushes,
                        new Supply.Facts(
                                line, "Round brush", Dimension.COUNT, Amount.of(500), null, List.of(), List.of())));
        tray = pieces.create("Tin tray", null, null);
        jug = pieces.create("Enamel jug", null, null);
        program.getBean(Books.class).record(receipt());
    }

    private Receipt receipt() {
        List<ReceiptLine> lines = new ArrayList<>();
        lines.add(line(1, LineKind.PIECES, "Tin tray", 1, 800, null));
        lines.add(line(2, LineKind.PIECES, "Enamel jug", 1, 400, null));
        lines.add(line(3, LineKind.SHELF, "Round brush", 10, 200, brushes));
        return new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        BOUGHT,
                        "",
                        null,
                        null,
                        Amount.of(3200),
                        lines,
                        List.of(new ReceiptPiece(1, tray, BigDecimal.ONE), new ReceiptPiece(2, jug, BigDecimal.ONE)),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.PLACE, bank, Amount.of(3200)))));
    }

    private static ReceiptLine line(int number, LineKind kind, String title, int quantity, long price, UUID supply) {
        return new ReceiptLine(
                number,
                kind,
                title,
                BigDecimal.valueOf(quantity),
                Amount.of(price),
                null,
                null,
                false,
                supply,
                supply == null ? null : BigDecimal.ONE,
                null);
    }

    /** All accounts that are not at zero; the whole adds to zero. */
    Map<String, Long> balances() {
        Map<String, Long> result = new TreeMap<>();
        jdbc.sql(
                        "select account, sum(amount_minor) as balance from posting group by account having sum(amount_minor) <> 0")
                .query(row -> {
                    result.put(row.getString("account"), row.getLong("balance"));
                });
        return result;
    }

    long money(UUID place) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from posting where account = 'MONEY' and place_id = ?")
                .param(place)
                .query(Long.class)
                .single();
    }

    String state(UUID piece) {
        return jdbc.sql("select state from piece_state where piece_id = ?")
                .param(piece)
                .query(String.class)
                .single();
    }

    long count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Long.class).single();
    }
}
