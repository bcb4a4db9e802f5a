package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Worked by hand; the estimate itself is checked in the package survival. Offers are invented. */
class PastPricesTest {

    /** Sold after 4, 10 and 20 days, standing for 12 and 30: 4/5, then 3/5, then of the two left one: 3/10. So 20. */
    @Test
    void whatDidNotSellCountsForTheDaysItStood() {
        PastPrices prices = of(sold(4, 2400), sold(10, 3000), open(12, 9900), sold(20, 2800), open(30, 1000));
        assertThat(prices.offered()).isEqualTo(5);
        assertThat(prices.sold()).isEqualTo(3);
        assertThat(prices.median()).isEqualTo("20");
        assertThat(prices.low()).isEqualTo(2400);
        assertThat(prices.high()).isEqualTo(3000);
        assertThat(prices.few()).isTrue();
    }

    /** Half are left from day 2 until day 5: the middle, 3.5. */
    @Test
    void aMiddleMayLieBetweenTwoDays() {
        assertThat(of(sold(1, 100), sold(2, 100), sold(5, 100), sold(8, 100)).median())
                .isEqualTo("3.5");
    }

    @Test
    void nothingIsSaidWhereFewerThanHalfSoldOrNoneWereOffered() {
        assertThat(of(sold(3, 100), open(8, 100), open(9, 100)).median()).isNull();
        assertThat(of().median()).isNull();
        assertThat(of().low()).isNull();
    }

    private static PastPrices of(PastOffer... offers) {
        return PastPrices.of(PastPrices.Likeness.KIND, new ArrayList<>(List.of(offers)), offer -> true);
    }

    private static PastOffer sold(long days, long first) {
        return offer("SOLD", days, first);
    }

    private static PastOffer open(long days, long first) {
        return offer("LIVE", days, first);
    }

    private static PastOffer offer(String state, long days, long first) {
        return new PastOffer(
                UUID.randomUUID(), "Tray", state, LocalDate.of(2025, 1, 1), days, first, first, null, null);
    }
}
