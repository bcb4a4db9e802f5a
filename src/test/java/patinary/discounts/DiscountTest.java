package patinary.discounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.money.Amount;
import patinary.money.Percent;

/** What a code takes off, worked by hand. Rounding half up is common practice, no source. */
class DiscountTest {

    private static final LocalDate FIRST = LocalDate.of(2025, 5, 1);

    @ParameterizedTest
    @CsvSource({
        "10, 5500, 550",
        "15, 4999, 750",
        "12.5, 1000, 125",
        "33.3, 1000, 333",
        "10, 5, 1",
        "100, 4200, 4200",
        "0, 4200, 0"
    })
    void aPercentageIsRoundedHalfUp(String percent, long price, long off) {
        assertThat(new Discount("SPRING", Percent.of(percent), null, FIRST, null).off(Amount.of(price)))
                .isEqualTo(Amount.of(off));
    }

    @ParameterizedTest
    @CsvSource({"500, 4200, 500", "500, 300, 300", "500, 0, 0"})
    void anAmountIsNeverMoreThanThePrice(long amount, long price, long off) {
        assertThat(new Discount("FIVER", null, Amount.of(amount), FIRST, null).off(Amount.of(price)))
                .isEqualTo(Amount.of(off));
    }

    @Test
    void holdsFromItsFirstDayToItsLast() {
        Discount may = new Discount("MAY", Percent.of("10"), null, FIRST, FIRST.plusDays(30));
        assertThat(may.holdsOn(FIRST.minusDays(1))).isFalse();
        assertThat(may.holdsOn(FIRST)).isTrue();
        assertThat(may.holdsOn(FIRST.plusDays(30))).isTrue();
        assertThat(may.holdsOn(FIRST.plusDays(31))).isFalse();
        assertThat(new Discount("EVER", Percent.of("10"), null, FIRST, null).holdsOn(FIRST.plusYears(9)))
                .isTrue();
    }
}
