package patinary.bringing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.selling.FeeRule;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;

/**
 * An invented shop whose sales are brought in: a tray that cost 8.00, a jug of 4.00, a sign of 2.00 and a stool of 3.00; ten
 * brushes on the shelf for 20.00; a marketplace that keeps 10 % and collects the tax.
 */
final class BroughtShop {

    final UUID market = UUID.randomUUID();
    final UUID balance = UUID.randomUUID();
    final UUID brushes = UUID.randomUUID();
    final UUID tray;
    private final UUID bank = UUID.randomUUID();
    private final JdbcClient jdbc;

    BroughtShop(ApplicationContext program) {
        jdbc = program.getBean(JdbcClient.class);
        MoneyPlaces places = program.getBean(MoneyPlaces.class);
        places.save(new MoneyPlace(bank, "Bank", MoneyPlace.Kind.BANK));
        places.save(new MoneyPlace(balance, "Marketplace balance", MoneyPlace.Kind.CHANNEL));
        FeeRule tenth = new FeeRule(LocalDate.of(2025, 1, 1), Percent.of("10"), Amount.ZERO);
        program.getBean(Channels.class).save(new Channel(market, "Marketplace", balance, true, List.of(tenth)));
        UUID line = UUID.randomUUID();
        program.getBean(SupplyLines.class).save(new SupplyLine(line, "Brushes", "an invented maker"));
        program.getBean(Supplies.class)
                .save(new Supply(
                        brushes,
                        new Supply.Facts(
                                line, "Round brush", Dimension.COUNT, Amount.of(500), null, List.of(), List.of())));
        NewPieces pieces = program.getBean(NewPieces.class);
        List<UUID> ids = List.of(
                pieces.create("Painted tin tray", null, null),
                pieces.create("Enamel jug", null, null),
                pieces.create("Caf\u00e9 sign", null, null),
                pieces.create("Stool", null, null));
        tray = ids.get(0);
        program.getBean(Books.class).record(receipt(ids));
    }

    private Receipt receipt(List<UUID> ids) {
        return new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        LocalDate.of(2025, 2, 1),
                        "",
                        null,
                        null,
                        Amount.of(3700),
                        List.of(
                                line(1, LineKind.PIECES, 1, 800, null),
                                line(2, LineKind.PIECES, 1, 400, null),
                                line(3, LineKind.PIECES, 1, 200, null),
                                line(4, LineKind.PIECES, 1, 300, null),
                                line(5, LineKind.SHELF, 10, 200, brushes)),
                        List.of(
                                new ReceiptPiece(1, ids.get(0), BigDecimal.ONE),
                                new ReceiptPiece(2, ids.get(1), BigDecimal.ONE),
                                new ReceiptPiece(3, ids.get(2), BigDecimal.ONE),
                                new ReceiptPiece(4, ids.get(3), BigDecimal.ONE)),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.PLACE, bank, Amount.of(3700)))));
    }

    private static ReceiptLine line(int number, LineKind kind, int quantity, long price, @Nullable UUID supply) {
        return new ReceiptLine(
                number,
                kind,
                "Invented goods",
                BigDecimal.valueOf(quantity),
                Amount.of(price),
                null,
                null,
                false,
                supply,
                supply == null ? null : BigDecimal.ONE,
                null);
    }

    /** All accounts that are not at zero. */
    Map<String, Long> balances() {
        Map<String, Long> result = new TreeMap<>();
        jdbc.sql(
                        "select account, sum(amount_minor) as balance from posting group by account having sum(amount_minor) <> 0")
                .query(row -> {
                    result.put(row.getString("account"), row.getLong("balance"));
                });
        return result;
    }

    long count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Long.class).single();
    }

    UUID sale(String order) {
        return jdbc.sql("select id from sale where order_reference = ?")
                .param(order)
                .query(UUID.class)
                .single();
    }
}
