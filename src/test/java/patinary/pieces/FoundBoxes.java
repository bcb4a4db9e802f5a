package patinary.pieces;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.buying.ReceiptPiece;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;

/** Documents about invented boxes, with as little in them as a test needs. */
final class FoundBoxes {

    private FoundBoxes() {}

    /** Pieces on one line of a receipt, paid by the owner herself; landed cost shared equally. */
    static Receipt bought(LocalDate day, long price, @Nullable UUID trip, UUID... pieces) {
        ReceiptLine line = new ReceiptLine(
                1, LineKind.PIECES, "Boxes", BigDecimal.ONE, Amount.of(price), null, null, false, null, null, null);
        return receipt(
                day,
                price,
                trip,
                line,
                List.of(pieces).stream()
                        .map(piece -> new ReceiptPiece(1, piece, BigDecimal.ONE))
                        .toList());
    }

    /** A container of a supply that holds so much. */
    static Receipt supply(LocalDate day, long price, UUID supply, long content) {
        ReceiptLine line = new ReceiptLine(
                1,
                LineKind.SUPPLY,
                "Jar",
                BigDecimal.ONE,
                Amount.of(price),
                null,
                null,
                false,
                supply,
                BigDecimal.valueOf(content),
                null);
        return receipt(day, price, null, line, List.of());
    }

    /** Work on one piece with one supply, judged by eye. */
    static BenchEntry worked(LocalDate day, UUID piece, int minutes, UUID supply, long quantity) {
        return new BenchEntry(
                UUID.randomUUID(),
                new BenchContent(
                        day,
                        "",
                        minutes,
                        "",
                        List.of(new BenchPiece(piece, false)),
                        List.of(new SupplyUse(1, supply, "some", BigDecimal.valueOf(quantity), true)),
                        List.of(new UsePiece(1, piece, BigDecimal.ONE)),
                        List.of()));
    }

    private static Receipt receipt(
            LocalDate day, long price, @Nullable UUID trip, ReceiptLine line, List<ReceiptPiece> pieces) {
        return new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        trip,
                        Amount.of(price),
                        List.of(line),
                        pieces,
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.OWNER, null, Amount.of(price)))));
    }
}
