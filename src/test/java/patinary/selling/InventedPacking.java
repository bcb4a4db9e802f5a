package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.ledger.Books;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;

/** Invented things to pack in: ten boxes for 12.00, a hundred sheets of tissue for 9.00, a roll of 50 m of tape for 4.00. */
final class InventedPacking {

    final UUID box = UUID.randomUUID();
    final UUID tissue = UUID.randomUUID();
    final UUID tape = UUID.randomUUID();

    private final Books books;
    private final UUID bank;

    InventedPacking(Books books, SupplyLines lines, Supplies supplies, UUID bank) {
        this.books = books;
        this.bank = bank;
        UUID line = UUID.randomUUID();
        lines.save(new SupplyLine(line, "Packing", "an invented maker"));
        supply(supplies, box, line, "Small box", Dimension.COUNT, measure("box", 1), measure("bundle", 10));
        supply(supplies, tissue, line, "Tissue", Dimension.COUNT, measure("sheet", 1), measure("ream", 100));
        supplies.save(new Supply(
                tape,
                new Supply.Facts(
                        line, "Tape", Dimension.LENGTH, null, null, List.of(measure("roll", 5000)), List.of())));
    }

    void buy(LocalDate day) {
        books.record(new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        Amount.of(2500),
                        List.of(line(1, box, 1200, 10), line(2, tissue, 900, 100), line(3, tape, 400, 5000)),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.PLACE, bank, Amount.of(2500))))));
    }

    private static void supply(
            Supplies supplies,
            UUID id,
            UUID line,
            String name,
            Dimension dimension,
            Supply.Named one,
            Supply.Named pack) {
        supplies.save(new Supply(id, new Supply.Facts(line, name, dimension, null, null, List.of(pack), List.of(one))));
    }

    private static Supply.Named measure(String name, long quantity) {
        return new Supply.Named(name, BigDecimal.valueOf(quantity));
    }

    private static ReceiptLine line(int number, UUID supply, long price, long content) {
        return new ReceiptLine(
                number,
                LineKind.SUPPLY,
                "",
                BigDecimal.ONE,
                Amount.of(price),
                null,
                null,
                false,
                supply,
                BigDecimal.valueOf(content),
                null);
    }
}
