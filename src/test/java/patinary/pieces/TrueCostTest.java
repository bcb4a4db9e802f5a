package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.money.Amount;

/** Worked by hand: rate × minutes ÷ 60, rounded half up to the cent. The rule is common practice, no source. */
class TrueCostTest {

    @ParameterizedTest
    @CsvSource({
        // landed, minutes, rate, trip, work, total
        "1620, 60, 2000, 0, 2000, 3620",
        "1620, 95, 2000, 0, 3167, 4787",
        "1620, 0.75, 2000, 210, 25, 1855",
        // 1 minute at 18.30 is 30.5 cents: half up to 31
        "0, 1, 1830, 0, 31, 31",
        "1000, 0, 2000, 333, 0, 1333",
        "1000, 45, 0, 0, 0, 1000"
    })
    void addsHerTimeAndTheWayToTheLandedCost(
            long landed, BigDecimal minutes, long rate, long trip, long work, long total) {
        TrueCost cost = TrueCost.of(Amount.of(landed), minutes, Amount.of(rate), Amount.of(trip));

        assertThat(cost.work()).isEqualTo(Amount.of(work));
        assertThat(cost.total()).isEqualTo(Amount.of(total));
    }
}
