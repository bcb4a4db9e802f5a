package patinary.testing;

import java.math.BigDecimal;
import java.time.LocalDate;
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
import patinary.ledger.Books;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.pieces.NewPieces;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;

/**
 * An invented bench for tests: a paint by volume (jar of 200 ml, dab of 2 ml), a paper by area, an oil; two pieces of 100
 * and 300 cm² of surface. Nothing has been bought yet.
 */
public final class StockedBench {

    public static final LocalDate DAY = LocalDate.of(2025, 3, 1);

    public final UUID line = UUID.randomUUID();
    public final UUID paint = UUID.randomUUID();
    public final UUID paper = UUID.randomUUID();
    public final UUID oil = UUID.randomUUID();
    public final UUID box;
    public final UUID crate;

    private final JdbcClient jdbc;
    private final Books books;

    public StockedBench(ApplicationContext program) {
        jdbc = program.getBean(JdbcClient.class);
        books = program.getBean(Books.class);
        program.getBean(SupplyLines.class).save(new SupplyLine(line, "Pond paints", "an invented maker"));
        Supplies supplies = program.getBean(Supplies.class);
        List<Supply.Named> jar = List.of(new Supply.Named("jar", BigDecimal.valueOf(200)));
        List<Supply.Named> dab = List.of(new Supply.Named("dab", BigDecimal.valueOf(2)));
        supplies.save(new Supply(paint, facts("Pond green", Dimension.VOLUME, jar, dab)));
        supplies.save(new Supply(paper, facts("Fern paper", Dimension.AREA, List.of(), List.of())));
        supplies.save(new Supply(oil, facts("Linseed oil", Dimension.VOLUME, List.of(), List.of())));
        box = piece(program, "Small box", 100);
        crate = piece(program, "Long crate", 300);
    }

    /** A receipt that brings 200 ml of paint. */
    public UUID paintFor(String dollars, LocalDate day) {
        return receipt(LineKind.SUPPLY, paint, BigDecimal.valueOf(200), dollars, day);
    }

    /** A receipt that brings one supply. */
    public UUID receipt(LineKind kind, UUID supply, BigDecimal content, String dollars, LocalDate day) {
        UUID id = UUID.randomUUID();
        Amount price = Amount.of(new BigDecimal(dollars).movePointRight(2).longValueExact());
        ReceiptLine bought =
                new ReceiptLine(1, kind, "a supply", BigDecimal.ONE, price, null, null, false, supply, content, null);
        books.record(new Receipt(
                id,
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        price,
                        List.of(bought),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.OWNER, null, price)))));
        return id;
    }

    /** Landed cost of each piece in cents, by its title. */
    public Map<String, Long> landed() {
        Map<String, Long> landed = new TreeMap<>();
        jdbc.sql("select p.title, f.landed_minor from piece_figures f join piece p on p.id = f.piece_id")
                .query(row -> {
                    landed.put(row.getString("title"), row.getLong("landed_minor"));
                });
        return landed;
    }

    /** What an account holds, in cents. */
    public long balance(String account) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from posting where account = ?")
                .param(account)
                .query(Long.class)
                .single();
    }

    /** What is left of the paint on the bench, in millilitres. */
    public BigDecimal paintLeft() {
        return jdbc.sql("select quantity from stock_left where supply_id = ? and place = 'BENCH'")
                .param(paint)
                .query(BigDecimal.class)
                .single();
    }

    private Supply.Facts facts(
            String name, Dimension dimension, List<Supply.Named> packs, List<Supply.Named> measures) {
        return new Supply.Facts(line, name, dimension, null, null, packs, measures);
    }

    private UUID piece(ApplicationContext program, String title, int area) {
        UUID id = program.getBean(NewPieces.class).create(title, null, null);
        jdbc.sql("update piece set area_cm2 = ? where id = ?")
                .params(BigDecimal.valueOf(area), id)
                .update();
        return id;
    }
}
