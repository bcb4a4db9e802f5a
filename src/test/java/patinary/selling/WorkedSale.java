package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;

/**
 * The worked example of docs/handbook/sales.md; all of it invented. A set of two pieces, weights 3 and 1, at 48.00 less
 * 8.00; three brushes at 5.00; 5.00 off the whole; shipping 6.00; tax 4.00; fee 5.90.
 * Packed in one box of 1.20, three sheets of tissue of 0.09 and a metre of tape of 0.08.
 */
final class WorkedSale {

    static final UUID TRAY = UUID.fromString("00000000-0000-4000-8000-00000000000a");
    static final UUID JUG = UUID.fromString("00000000-0000-4000-8000-00000000000b");
    static final UUID BRUSHES = UUID.fromString("00000000-0000-4000-8000-00000000000c");
    static final UUID CHANNEL = UUID.fromString("00000000-0000-4000-8000-00000000000d");
    static final UUID PLACE = UUID.fromString("00000000-0000-4000-8000-00000000000e");
    static final UUID BOX = UUID.fromString("00000000-0000-4000-8000-0000000000b1");
    static final UUID TISSUE = UUID.fromString("00000000-0000-4000-8000-0000000000b2");
    static final UUID TAPE = UUID.fromString("00000000-0000-4000-8000-0000000000b3");
    static final LocalDate DAY = LocalDate.of(2025, 3, 10);

    private WorkedSale() {}

    static SaleContent sale(boolean taxPassed) {
        SaleContent unpaid = new SaleContent(
                DAY,
                "",
                CHANNEL,
                "",
                "",
                Amount.of(500),
                Amount.of(600),
                Amount.of(400),
                taxPassed,
                Amount.of(590),
                PLACE,
                null,
                List.of(
                        new SaleLine(1, "Tray and jug", BigDecimal.ONE, Amount.of(4800), Amount.of(800), null, null),
                        new SaleLine(
                                2,
                                "Round brush",
                                BigDecimal.valueOf(3),
                                Amount.of(500),
                                Amount.ZERO,
                                BRUSHES,
                                BigDecimal.ONE)),
                List.of(new SalePiece(1, TRAY, BigDecimal.valueOf(3)), new SalePiece(1, JUG, BigDecimal.ONE)),
                List.of(),
                List.of());
        return unpaid.paidBy(
                List.of(new Tender(1, Way.PLACE, PLACE, unpaid.sums().due())));
    }

    /** The same, packed in one box, three sheets of tissue, and a metre of tape by eye. */
    static SaleContent packed() {
        return sale(true)
                .packedIn(List.of(
                        new Wrap(1, BOX, "1 box", BigDecimal.ONE, false),
                        new Wrap(2, TISSUE, "3 sheets", BigDecimal.valueOf(3), false),
                        new Wrap(3, TAPE, "1 m", BigDecimal.valueOf(100), true)));
    }

    /** These lines, paid at once, without shipping, tax and fee. */
    static SaleContent of(List<SaleLine> lines) {
        Amount none = Amount.ZERO;
        SaleContent unpaid = new SaleContent(
                DAY, "", CHANNEL, "", "", none, none, none, false, none, PLACE, null, lines, List.of(), List.of(),
                List.of());
        return unpaid.paidBy(
                List.of(new Tender(1, Way.PLACE, PLACE, unpaid.sums().due())));
    }
}
