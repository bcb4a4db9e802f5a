package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** Three bands with about a third of the offers in each. */
class PriceBandsTest {

    /** Of seven, three, two and two: the third and the fifth are the highest of their bands. */
    @Test
    void byHand() {
        assertThat(bands(10, 20, 30, 40, 50, 60, 70)).isEqualTo(new PriceBands(Amount.of(30), Amount.of(50)));
        assertThat(bands(10)).isEqualTo(new PriceBands(Amount.of(10), Amount.of(10)));
        assertThat(bands(10, 10, 10, 90)).isEqualTo(new PriceBands(Amount.of(10), Amount.of(10)));
    }

    /** The plain way: sort all, and count to the place. */
    @Property
    void areThoseAtAThirdOfTheSortedPrices(
            @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 1, max = 12) Integer> prices) {
        List<Amount> sorted =
                prices.stream().map(price -> Amount.of(price)).sorted().toList();
        int low = (int) Math.ceil(sorted.size() / 3.0) - 1;
        int high = (int) Math.ceil(2 * sorted.size() / 3.0) - 1;
        assertThat(PriceBands.of(sorted)).isEqualTo(new PriceBands(sorted.get(low), sorted.get(high)));
    }

    private static PriceBands bands(long... prices) {
        return PriceBands.of(LongStream.of(prices).mapToObj(Amount::of).toList());
    }
}
