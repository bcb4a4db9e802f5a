package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.Shares;

class ReceiptSumsTest {

    private static final UUID SUPPLY = UUID.fromString("00000000-0000-4000-8000-0000000000aa");

    /** Source: Treas. Reg. 1.61-6(a), example 2: 25,000 for values of 10,000 and 15,000; the second costs 15,000. */
    @Test
    void sharesALumpAsTheRegulationDoes() {
        assertThat(lump(2_500_000, 10_000, 15_000)).containsExactly(1_000_000L, 1_500_000L);
    }

    /** Source: Principles of financial accounting, chapter 10: 326,000 for values of 175,000, 70,000 and 105,000. */
    @Test
    void sharesABasketAsTheTextbookDoes() {
        assertThat(lump(32_600_000, 175_000, 70_000, 105_000)).containsExactly(16_300_000L, 6_520_000L, 9_780_000L);
    }

    /** Source: textbook basket purchase, 60,000 for values of 30,000, 18,000 and 27,000. */
    @Test
    void sharesASecondBasketAsTheTextbookDoes() {
        assertThat(lump(6_000_000, 30_000, 18_000, 27_000)).containsExactly(2_400_000L, 1_440_000L, 2_160_000L);
    }

    /** Derived by hand: 10 % of 19.99 is 1.999, rounded half up to 2.00. */
    @Test
    void takesALinesOwnPercentageOff() {
        ReceiptLine line = line(1, LineKind.HOME, "1", 1999, Percent.of("10"), null);
        assertThat(line.net()).isEqualTo(Amount.of(1799));
    }

    /** Derived by hand: 20 % off 10.00 leaves 8.00, of which 10 % are 0.80; together 7.20 and not 7.00. */
    @Test
    void takesASecondDiscountOffWhatTheFirstHasLeft() {
        ReceiptSums sums = sums(
                List.of(line(1, LineKind.HOME, "1", 1000)),
                List.of(percent(1, ChargeKind.DISCOUNT, "20"), percent(2, ChargeKind.DISCOUNT, "10")));
        assertThat(sums.total()).isEqualTo(Amount.of(720));
        assertThat(sums.charged()).containsEntry(2, Amount.of(-80));
    }

    /** Derived by hand: a cent is left over; 5.00 × 10/30 = 1.666…, 5.00 × 20/30 = 3.333…. */
    @Test
    void sharesAReceiptsDiscountByNet() {
        ReceiptSums sums = sums(
                List.of(line(1, LineKind.HOME, "1", 1000), line(2, LineKind.HOME, "2", 1000)),
                List.of(amount(1, ChargeKind.DISCOUNT, 500)));
        assertThat(minor(sums.landed())).containsExactly(833L, 1667L);
    }

    /** Derived by hand: 8.25 % of (100.00 − 10.00) = 7.425, half up 7.43; after tax the discount leaves the tax alone. */
    @Test
    void taxesWhatADiscountBeforeTaxLeaves() {
        List<ReceiptLine> lines = List.of(line(1, LineKind.HOME, "1", 10_000));
        ReceiptCharge tax = percent(1, ChargeKind.TAX, "8.25");
        ReceiptSums before = sums(lines, List.of(tax, amount(2, ChargeKind.DISCOUNT, 1000)));
        assertThat(before.total()).isEqualTo(Amount.of(9743));
        ReceiptSums after = sums(
                lines, List.of(tax, new ReceiptCharge(2, ChargeKind.DISCOUNT, "", null, Amount.of(1000), false, true)));
        assertThat(after.total()).isEqualTo(Amount.of(9825));
        assertThat(after.parts().get(0).tax()).isEqualTo(Amount.of(825));
    }

    /** Derived by hand: only the second line is taxed; the exempt first line bears none of it. */
    @Test
    void leavesExemptLinesWithoutTax() {
        ReceiptSums sums = ReceiptSums.of(
                List.of(line(1, LineKind.PIECES, "1", 5000), line(2, LineKind.HOME, "1", 1000)),
                List.of(percent(1, ChargeKind.TAX, "10")),
                List.of(new ChargeLine(1, 2)));
        assertThat(minor(sums.landed())).containsExactly(5000L, 1100L);
    }

    /** Derived by hand: shipping 4.00 by net is 1.00 and 3.00; taxed, 10 % fall on 11.00 and 33.00. */
    @Test
    void taxesShippingWhereTheTillDid() {
        List<ReceiptLine> lines = List.of(line(1, LineKind.HOME, "1", 1000), line(2, LineKind.HOME, "1", 3000));
        ReceiptCharge tax = percent(2, ChargeKind.TAX, "10");
        ReceiptSums taxed = sums(
                lines, List.of(new ReceiptCharge(1, ChargeKind.SHIPPING, "", null, Amount.of(400), true, false), tax));
        assertThat(minor(taxed.landed())).containsExactly(1210L, 3630L);
        ReceiptSums untaxed = sums(lines, List.of(amount(1, ChargeKind.SHIPPING, 400), tax));
        assertThat(minor(untaxed.landed())).containsExactly(1200L, 3600L);
    }

    /** Derived by hand: a buyer's premium of 15 % on the hammer price, and tax on both. */
    @Test
    void addsAPremiumBeforeTax() {
        ReceiptSums sums = sums(
                List.of(line(1, LineKind.HOME, "1", 20_000)),
                List.of(
                        new ReceiptCharge(1, ChargeKind.PREMIUM, "", Percent.of("15"), null, true, false),
                        percent(2, ChargeKind.TAX, "10")));
        assertThat(sums.total()).isEqualTo(Amount.of(25_300));
        assertThat(sums.parts().get(0).charges()).isEqualTo(Amount.of(3000));
    }

    /** Derived by hand: the round-up from 9.63 to 10.00 takes no share of tax and gets none. */
    @Test
    void givesADonationNoShare() {
        ReceiptSums sums = sums(
                List.of(line(1, LineKind.HOME, "1", 900), line(2, LineKind.CHARITY, "1", 37)),
                List.of(percent(1, ChargeKind.TAX, "7")));
        assertThat(minor(sums.landed())).containsExactly(963L, 37L);
        assertThat(sums.total()).isEqualTo(Amount.of(1000));
    }

    /** Derived by hand: three things and one thing for nothing, carriage 8.00: 6.00 and 2.00 by count. */
    @Test
    void sharesByCountWhereEverythingWasForNothing() {
        ReceiptSums sums = sums(
                List.of(line(1, LineKind.HOME, "3", 0), line(2, LineKind.HOME, "1", 0)),
                List.of(amount(1, ChargeKind.SHIPPING, 800)));
        assertThat(minor(sums.landed())).containsExactly(600L, 200L);
    }

    /** Derived by hand: 10.02 paid in cash as 10.00; the rounding is in no line's cost. */
    @Test
    void keepsCashRoundingApart() {
        ReceiptSums sums =
                sums(List.of(line(1, LineKind.HOME, "1", 1002)), List.of(amount(1, ChargeKind.ROUNDING, -2)));
        assertThat(sums.total()).isEqualTo(Amount.of(1000));
        assertThat(minor(sums.landed())).containsExactly(1002L);
        assertThat(sums.rounding()).isEqualTo(Amount.of(-2));
    }

    @Test
    void saysSoWhereADiscountTakesMoreThanThereIs() {
        ReceiptSums sums =
                sums(List.of(line(1, LineKind.HOME, "1", 100)), List.of(amount(1, ChargeKind.DISCOUNT, 101)));
        assertThat(sums.isBearable()).isFalse();
    }

    @Test
    void saysSoWhereOnlyADonationIsLeftToBearACharge() {
        ReceiptSums sums = sums(List.of(line(1, LineKind.CHARITY, "1", 100)), List.of(amount(1, ChargeKind.FEE, 50)));
        assertThat(sums.isBearable()).isFalse();
        assertThat(sums.total()).isEqualTo(Amount.of(100));
    }

    private static List<Long> lump(long total, int... values) {
        return Shares.split(
                        sums(List.of(line(1, LineKind.PIECES, "1", total)), List.of())
                                .landed()
                                .get(0),
                        java.util.Arrays.stream(values)
                                .mapToObj(BigDecimal::valueOf)
                                .toList())
                .stream()
                .map(Amount::minor)
                .toList();
    }

    private static ReceiptSums sums(List<ReceiptLine> lines, List<ReceiptCharge> charges) {
        return ReceiptSums.of(lines, charges, List.of());
    }

    private static List<Long> minor(List<Amount> amounts) {
        return amounts.stream().map(Amount::minor).toList();
    }

    static ReceiptLine line(int number, LineKind kind, String quantity, long price) {
        return line(number, kind, quantity, price, null, null);
    }

    static ReceiptLine line(
            int number,
            LineKind kind,
            String quantity,
            long price,
            @Nullable Percent percent,
            @Nullable Amount discount) {
        boolean supply = kind.isSupply();
        return new ReceiptLine(
                number,
                kind,
                "Line " + number,
                new BigDecimal(quantity),
                Amount.of(price),
                percent,
                discount,
                false,
                supply ? SUPPLY : null,
                supply ? BigDecimal.TEN : null,
                kind == LineKind.EXPENSE ? "office" : null);
    }

    static ReceiptCharge percent(int number, ChargeKind kind, String percent) {
        return new ReceiptCharge(number, kind, "", Percent.of(percent), null, false, false);
    }

    static ReceiptCharge amount(int number, ChargeKind kind, long minor) {
        return new ReceiptCharge(number, kind, "", null, Amount.of(minor), false, false);
    }
}
