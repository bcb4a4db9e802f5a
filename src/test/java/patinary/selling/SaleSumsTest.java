package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

class SaleSumsTest {

    /**
     * Worked by hand in docs/handbook/sales.md. Nets 40.00 and 15.00; of 5.00 off 3.6364 and 1.3636; of the shipping 4.3636
     * and 1.6364; of the fee 4.2909 and 1.6091; the set's own by 3 to 1. Sharing by relative value is common practice.
     */
    @Test
    void sharesEverythingByPriceAndThenByWeight() {
        assertThat(WorkedSale.sale(true).sums().parts())
                .extracting(
                        part -> part.piece() == null ? part.supply() : part.piece(),
                        part -> part.price().minor(),
                        part -> part.shipping().minor(),
                        part -> part.fee().minor())
                .containsExactly(
                        tuple(WorkedSale.TRAY, 2727L, 327L, 322L),
                        tuple(WorkedSale.JUG, 909L, 109L, 107L),
                        tuple(WorkedSale.BRUSHES, 1364L, 164L, 161L));
    }

    @Test
    void owesTheShopTheTaxOnlyWhereTheChannelDoesNotPassItOn() {
        assertThat(WorkedSale.sale(true).sums().due()).isEqualTo(Amount.of(5600));
        assertThat(WorkedSale.sale(false).sums().due()).isEqualTo(Amount.of(6000));
    }

    /** Given away with shipping charged: every price is zero, so the shipping is shared equally. */
    @Test
    void sharesEquallyWhereEveryPriceIsZero() {
        SaleSums sums = sums(List.of(0L, 0L, 0L), 0, 500, 0);
        assertThat(sums.parts()).extracting(part -> part.shipping().minor()).containsExactly(167L, 167L, 166L);
    }

    @Property
    void partsAddUpToTheSale(
            @ForAll @Size(min = 1, max = 8) List<@LongRange(min = 0, max = 1_000_000) Long> prices,
            @ForAll @IntRange(max = 100) int discountPercent,
            @ForAll @LongRange(min = 0, max = 100_000) long shipping,
            @ForAll @LongRange(min = 0, max = 100_000) long fee) {
        long gross = prices.stream().mapToLong(Long::longValue).sum();
        long discount = gross * discountPercent / 100;
        SaleSums sums = sums(prices, discount, shipping, fee);
        assertThat(sums.price().minor()).isEqualTo(gross - discount);
        assertThat(sums.due().minor()).isEqualTo(gross - discount + shipping);
        assertThat(sums.parts().stream()
                        .map(SaleSums.Part::shipping)
                        .collect(Amount.sum())
                        .minor())
                .isEqualTo(shipping);
        assertThat(sums.parts().stream()
                        .map(SaleSums.Part::fee)
                        .collect(Amount.sum())
                        .minor())
                .isEqualTo(fee);
        assertThat(sums.parts()).noneMatch(part -> part.price().isNegative());
    }

    /** Every line is a set of two pieces with weights 2 and 1. */
    private static SaleSums sums(List<Long> prices, long discount, long shipping, long fee) {
        List<SaleLine> lines = new ArrayList<>();
        List<SalePiece> pieces = new ArrayList<>();
        for (int i = 0; i < prices.size(); i++) {
            lines.add(new SaleLine(i + 1, "", BigDecimal.ONE, Amount.of(prices.get(i)), Amount.ZERO, null, null));
            if (prices.size() > 3) {
                pieces.add(new SalePiece(i + 1, new UUID(i, 1), BigDecimal.valueOf(2)));
                pieces.add(new SalePiece(i + 1, new UUID(i, 2), BigDecimal.ONE));
            }
        }
        SaleContent sale = new SaleContent(
                WorkedSale.DAY,
                "",
                WorkedSale.CHANNEL,
                "",
                "",
                Amount.of(discount),
                Amount.of(shipping),
                Amount.ZERO,
                false,
                Amount.of(fee),
                WorkedSale.PLACE,
                null,
                lines,
                pieces,
                List.of(),
                List.of());
        return sale.sums();
    }
}
