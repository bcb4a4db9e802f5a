package patinary.spending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.money.Amount;

class MileageRatesTest {

    private final MileageRates rates = MileageRates.load();

    /** Amounts derived from IRS Notice 2022-3 (58.5 cents to 30 June) and Announcement 2022-13 (62.5 from 1 July). */
    @ParameterizedTest
    @CsvSource({
        "2022-06-30, 100, 5850",
        "2022-07-01, 100, 6250",
        "2022-06-30, 1, 59",
        "2022-06-30, 0.1, 6",
        "2022-12-31, 12.4, 775",
        "2023-01-01, 0, 0"
    })
    void takesTheRateOfTheDayOfTheTrip(LocalDate day, BigDecimal miles, long cents) {
        assertThat(rates.rateOn(day, "US").orElseThrow().amountFor(miles)).isEqualTo(Amount.of(cents));
    }

    /** Sources: IRS Notice 2018-3, Notice 2019-2, 2023 Instructions for Schedule C, Notice 2026-10. */
    @ParameterizedTest
    @CsvSource({"2018-12-31, 545", "2019-01-01, 580", "2023-06-15, 655", "2026-11-25, 725"})
    void knowsTheRatesOfTheYears(LocalDate day, BigDecimal tenths) {
        assertThat(rates.rateOn(day, "US").orElseThrow().tenthsOfACent()).isEqualByComparingTo(tenths);
    }

    @Test
    void guessesNothing() {
        assertThat(rates.rateOn(LocalDate.of(2014, 12, 31), "US")).isEmpty();
        assertThat(rates.rateOn(LocalDate.of(2027, 1, 1), "US")).isEmpty();
        assertThat(rates.rateOn(LocalDate.of(2022, 7, 1), "ZZ")).isEmpty();
    }

    @Test
    void refusesADistanceBelowZero() {
        MileageRate rate = rates.all().get(0);
        BigDecimal distance = BigDecimal.valueOf(-1);
        assertThatThrownBy(() -> rate.amountFor(distance)).isInstanceOf(IllegalArgumentException.class);
    }
}
