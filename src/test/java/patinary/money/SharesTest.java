package patinary.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SharesTest {

    /** Source: Electowiki, "Hamilton method", worked example on the United States census of 1790, 60 seats. */
    @Test
    void sharesTheSeatsOfThe1790Census() {
        assertThat(split(
                        60, 630_560, 475_327, 432_879, 353_523, 331_589, 278_514, 236_841, 206_236, 179_570, 141_822,
                        85_533, 70_835, 68_705, 68_446, 55_540))
                .containsExactly(11L, 8L, 7L, 6L, 6L, 5L, 4L, 3L, 3L, 2L, 1L, 1L, 1L, 1L, 1L);
    }

    /** Source: a published largest remainder example, 42 units over a total of 1,704,000; the page was not noted down. */
    @Test
    void shares42Units() {
        assertThat(split(42, 247_000, 185_000, 459_000, 400_000, 413_000)).containsExactly(6L, 5L, 11L, 10L, 10L);
    }

    /** Source: Lippman, Math in Society, chapter 4, Delaware with 41 seats; figures from memory, result recomputed. */
    @Test
    void sharesDelawaresSeats() {
        assertThat(split(41, 162_310, 538_479, 197_145)).containsExactly(7L, 25L, 9L);
    }

    /** Source: Lippman, Math in Society, chapter 4, Rhode Island with 75 seats; figures from memory, result recomputed. */
    @Test
    void sharesRhodeIslandsSeats() {
        assertThat(split(75, 49_875, 166_158, 82_888, 626_667, 126_979)).containsExactly(3L, 12L, 6L, 45L, 9L);
    }

    /** Source: Treas. Reg. 1.61-6(a), example 2: a lot and a station bought together for 25,000. */
    @Test
    void apportionsTheRegulationsLump() {
        assertThat(split(2_500_000, 10_000, 15_000)).containsExactly(1_000_000L, 1_500_000L);
    }

    /** Ties are not covered by the published rule; here the earlier share wins. Derived by hand. */
    @Test
    void givesATieToTheEarlierShare() {
        assertThat(split(1000, 1, 1, 1)).containsExactly(334L, 333L, 333L);
        assertThat(split(2, 1, 1, 1)).containsExactly(1L, 1L, 0L);
    }

    /** Derived by hand: three cents left over go to the three largest fractions, none to the fourth's rounding. */
    @Test
    void sharesMoneyByNet() {
        assertThat(split(4999, 2500, 1500, 999, 1)).containsExactly(2499L, 1500L, 999L, 1L);
        assertThat(split(10_000, 333, 333, 334)).containsExactly(3330L, 3330L, 3340L);
    }

    /** Negative totals are not covered by the published rule; here a refund mirrors the sale. Derived by hand. */
    @Test
    void mirrorsARefund() {
        assertThat(split(-1000, 1, 1, 1)).containsExactly(-334L, -333L, -333L);
    }

    @Test
    void givesNothingToZeroWeightsAndSharesEquallyWhereAllAreZero() {
        assertThat(split(1000, 1, 0)).containsExactly(1000L, 0L);
        assertThat(split(0, 3, 4)).containsExactly(0L, 0L);
        assertThat(split(1001, 0, 0)).containsExactly(501L, 500L);
        assertThat(Shares.equally(Amount.of(-5), 2)).containsExactly(Amount.of(-3), Amount.of(-2));
    }

    @Test
    void takesFractionalWeightsExactly() {
        assertThat(Shares.split(Amount.of(100), List.of(new BigDecimal("0.1"), new BigDecimal("0.30"))))
                .containsExactly(Amount.of(25), Amount.of(75));
        assertThat(Shares.split(Amount.of(100), List.of(new BigDecimal("1E+2"), new BigDecimal("300"))))
                .containsExactly(Amount.of(25), Amount.of(75));
    }

    @Test
    void refusesNoWeightsAndNegativeOnes() {
        assertThatThrownBy(() -> Shares.split(Amount.of(1), List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> split(1, 1, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void loseNothingAndStayWithinOneUnitOfTheQuota(
            @ForAll @LongRange(min = -1_000_000_000L, max = 1_000_000_000L) long total,
            @ForAll @Size(min = 1, max = 40) List<@IntRange(max = 100_000) Integer> weights) {
        long[] shares = split(total, weights.stream().mapToLong(w -> w).toArray());
        assertThat(Arrays.stream(shares).sum()).isEqualTo(total);
        long sum = weights.stream().mapToLong(w -> w).sum();
        for (int i = 0; sum > 0 && i < shares.length; i++) {
            long distance = Math.abs(shares[i] * sum - total * weights.get(i));
            assertThat(distance).isLessThan(sum);
        }
    }

    private static long[] split(long total, long... weights) {
        return Shares.byAmount(
                        Amount.of(total),
                        LongStream.of(weights).mapToObj(Amount::of).toList())
                .stream()
                .mapToLong(Amount::minor)
                .toArray();
    }
}
