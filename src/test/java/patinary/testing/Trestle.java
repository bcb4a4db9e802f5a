package patinary.testing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
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
import patinary.money.Amount;
import patinary.pieces.NewPieces;
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.selling.Offer;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;

/** Invented pieces to be labelled, put somewhere and taken along; a stall with a cash box. */
public final class Trestle {

    public static final LocalDate DAY = LocalDate.of(2025, 3, 1);

    public final UUID cash = UUID.randomUUID();
    public final UUID stall = UUID.randomUUID();

    private final ApplicationContext program;
    private final JdbcClient jdbc;

    public Trestle(ApplicationContext program) {
        this.program = program;
        jdbc = program.getBean(JdbcClient.class);
        program.getBean(MoneyPlaces.class).save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
        program.getBean(Channels.class).save(new Channel(stall, "Stall", cash, false, List.of()));
    }

    /** A piece with the next code, bought for 4.00 and put into a place. */
    public UUID piece(String title, String place) {
        UUID id = program.getBean(NewPieces.class).create(title, null, null);
        jdbc.sql("update piece set place = ? where id = ?").params(place, id).update();
        Amount price = Amount.of(400);
        program.getBean(Books.class)
                .record(new Receipt(
                        UUID.randomUUID(),
                        new ReceiptContent(
                                DAY,
                                "",
                                null,
                                null,
                                price,
                                List.of(new ReceiptLine(
                                        1,
                                        LineKind.PIECES,
                                        title,
                                        BigDecimal.ONE,
                                        price,
                                        null,
                                        null,
                                        false,
                                        null,
                                        null,
                                        null)),
                                List.of(new ReceiptPiece(1, id, BigDecimal.ONE)),
                                List.of(),
                                List.of(),
                                List.of(new Tender(1, Way.OWNER, null, price)))));
        return id;
    }

    /** The same, on offer at the stall for so many cents. */
    public UUID offered(String title, String place, long price) {
        UUID id = piece(title, place);
        program.getBean(Books.class)
                .record(new Offer(
                        UUID.randomUUID(),
                        new Offer.Content(
                                DAY,
                                "",
                                title,
                                null,
                                null,
                                List.of(new Offer.OfferedPiece(id, BigDecimal.ONE)),
                                List.of(stall),
                                List.of(new Offer.Price(DAY, Amount.of(price))),
                                List.of())));
        return id;
    }

    public String place(UUID piece) {
        return jdbc.sql("select place from piece where id = ?")
                .param(piece)
                .query(String.class)
                .single();
    }
}
