package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import patinary.ledger.Move;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.money.Percent;

/** What holds for every receipt. */
class ReceiptPropertyTest {

    /** A receipt as far as its sums need it. */
    record Bill(List<ReceiptLine> lines, List<ReceiptCharge> charges, List<ChargeLine> chargeLines) {

        ReceiptSums sums() {
            return ReceiptSums.of(lines, charges, chargeLines);
        }
    }

    /** The total worked out along another way: from what was charged, not from the lines. */
    @Property(tries = 500)
    void netAndChargesAddUpToTheTotal(@ForAll("bills") Bill bill) {
        ReceiptSums sums = bill.sums();
        Amount net = sums.net().stream().collect(Amount.sum());
        Amount charged = sums.charged().values().stream().collect(Amount.sum());
        assertThat(sums.total()).isEqualTo(net.plus(charged));
    }

    @Property(tries = 500)
    void landedCostsAndRoundingAddUpToTheTotal(@ForAll("bills") Bill bill) {
        ReceiptSums sums = bill.sums();
        Amount landed = sums.landed().stream().collect(Amount.sum());
        assertThat(landed.plus(sums.rounding())).isEqualTo(sums.total());
        assertThat(sums.parts().stream().map(ReceiptSums.Parts::landed).toList())
                .isEqualTo(sums.landed());
    }

    @Property(tries = 500)
    void noLineEverCostsLessThanNothing(@ForAll("bills") Bill bill) {
        assertThat(bill.sums().landed()).noneMatch(Amount::isNegative);
    }

    @Property(tries = 500)
    void aDonationCostsWhatWasGiven(@ForAll("bills") Bill bill) {
        ReceiptSums sums = bill.sums();
        IntStream.range(0, bill.lines().size())
                .filter(i -> bill.lines().get(i).kind() == LineKind.CHARITY)
                .forEach(i ->
                        assertThat(sums.landed().get(i)).isEqualTo(sums.net().get(i)));
    }

    /** Whatever a receipt holds, what comes in and what is paid balance. */
    @Property(tries = 500)
    void postingsAddToZero(@ForAll("bills") Bill bill) {
        Amount total = bill.sums().total();
        ReceiptContent content = new ReceiptContent(
                LocalDate.of(2025, 3, 4),
                "",
                null,
                null,
                total,
                bill.lines(),
                pieces(bill),
                bill.charges(),
                bill.chargeLines(),
                List.of(new Tender(1, Way.OWNER, null, total)));
        assertThat(ReceiptPosting.moves(content).stream()
                        .map(ReceiptPropertyTest::amount)
                        .collect(Amount.sum()))
                .isEqualTo(Amount.ZERO);
    }

    private static List<ReceiptPiece> pieces(Bill bill) {
        List<ReceiptPiece> pieces = new ArrayList<>();
        bill.lines().stream().filter(line -> line.kind() == LineKind.PIECES).forEach(line -> {
            for (int weight = 1; weight <= 3; weight++) {
                pieces.add(new ReceiptPiece(line.line(), new UUID(line.line(), weight), BigDecimal.valueOf(weight)));
            }
        });
        return pieces;
    }

    private static Amount amount(Move move) {
        if (move instanceof Move.Post post) {
            return post.amount();
        }
        if (move instanceof Move.SupplyIn in) {
            return in.cost();
        }
        if (move instanceof Move.PieceIn in) {
            return in.cost();
        }
        throw new AssertionError("A receipt does not make " + move);
    }

    @Provide
    Arbitrary<Bill> bills() {
        return lines().flatMap(lines -> charges()
                .flatMap(charges -> Arbitraries.subsetOf(named(lines, charges))
                        .map(named -> new Bill(lines, charges, List.copyOf(named)))));
    }

    private static List<ChargeLine> named(List<ReceiptLine> lines, List<ReceiptCharge> charges) {
        return charges.stream()
                .flatMap(charge -> lines.stream().map(line -> new ChargeLine(charge.line(), line.line())))
                .toList();
    }

    private static Arbitrary<List<ReceiptLine>> lines() {
        return Combinators.combine(
                        Arbitraries.of(LineKind.class),
                        Arbitraries.integers().between(1, 9),
                        Arbitraries.longs().between(0, 20_000),
                        Arbitraries.integers().between(0, 100))
                .as((kind, quantity, price, off) -> ReceiptSumsTest.line(
                        1, kind, String.valueOf(quantity), price, off > 60 ? Percent.of("" + off) : null, null))
                .list()
                .ofMinSize(1)
                .ofMaxSize(6)
                .map(lines -> IntStream.range(0, lines.size())
                        .mapToObj(i -> numbered(lines.get(i), i + 1))
                        .toList());
    }

    private static ReceiptLine numbered(ReceiptLine line, int number) {
        return new ReceiptLine(
                number,
                line.kind(),
                line.title(),
                line.quantity(),
                line.price(),
                line.discountPercent(),
                line.discount(),
                line.about(),
                line.supplyId(),
                line.content(),
                line.category());
    }

    private static Arbitrary<List<ReceiptCharge>> charges() {
        return Combinators.combine(
                        Arbitraries.of(ChargeKind.class),
                        Arbitraries.longs().between(0, 3_000),
                        Arbitraries.integers().between(0, 100),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false))
                .as((kind, minor, percent, taxed, after) -> {
                    boolean isAmount = kind == ChargeKind.ROUNDING || taxed;
                    return new ReceiptCharge(
                            1,
                            kind,
                            "",
                            isAmount ? null : Percent.of("" + percent),
                            isAmount ? Amount.of(minor) : null,
                            taxed,
                            after);
                })
                .list()
                .ofMaxSize(5)
                .map(charges -> IntStream.range(0, charges.size())
                        .mapToObj(i -> {
                            ReceiptCharge c = charges.get(i);
                            return new ReceiptCharge(
                                    i + 1, c.kind(), c.title(), c.percent(), c.amount(), c.taxed(), c.afterTax());
                        })
                        .toList());
    }
}
