package patinary.homeuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.money.Amount;

/** The simplified deduction of a home: IRS Revenue Procedure 2013-13 (read). Amounts in cents. */
class HomeUseTest {

    private final HomeRate rate = HomeRates.load().of("US", 2025).orElseThrow();

    /** 5 dollars a square foot, 300 at most; the months and the limit by income are worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "150, 12, 9000000, 75000",
        "300, 12, 9000000, 150000",
        "420, 12, 9000000, 150000",
        "300, 6, 9000000, 75000",
        "100, 1, 9000000, 4167",
        "150, 12, 60000, 60000",
        "150, 12, 0, 0",
        "150, 12, -500, 0"
    })
    void theAreaAndTheIncomeLimitIt(BigDecimal feet, int months, long tentative, long deduction) {
        HomeUse use = new HomeUse(2025, feet, months, "", rate);
        assertThat(use.deduction(Amount.of(tentative))).isEqualTo(Amount.of(deduction));
    }

    @Test
    void noRateIsGuessed() {
        assertThat(HomeRates.load().of("US", 2012)).isEmpty();
        assertThat(HomeRates.load().of("", 2025)).isEmpty();
    }

    @Property
    void neverMoreThanTheProfitNorTheMost(
            @ForAll @IntRange(min = 1, max = 2000) int feet,
            @ForAll @IntRange(min = 1, max = 12) int months,
            @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int tentative) {
        Amount deduction =
                new HomeUse(2025, BigDecimal.valueOf(feet), months, "", rate).deduction(Amount.of(tentative));
        assertThat(deduction.minor()).isBetween(0L, Math.max(0L, Math.min(150_000L, tentative)));
    }
}
