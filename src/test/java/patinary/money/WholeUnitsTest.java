package patinary.money;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rounding to whole units. */
class WholeUnitsTest {

    /**
     * 1.39 and 2.50: Instructions for Form 1040 (read); 129.49, 235.50 and 23,501.28: Iowa Department of Revenue (read); below
     * zero and without minor units: worked by hand from the same rule.
     */
    @ParameterizedTest
    @CsvSource({
        "139, 2, 100",
        "250, 2, 300",
        "12949, 2, 12900",
        "23550, 2, 23600",
        "2350128, 2, 2350100",
        "-250, 2, -300",
        "-249, 2, -200",
        "0, 2, 0",
        "77, 0, 77",
        "1500, 3, 2000"
    })
    void halfAUnitGoesUp(long minor, int digits, long whole) {
        assertThat(WholeUnits.round(Amount.of(minor), digits)).isEqualTo(Amount.of(whole));
    }

    /** 5,000.55 + 18,500.73 on one line are 23,501, not 23,502: only the total is rounded (Iowa Department of Revenue, read). */
    @Test
    void onlyTheTotalOfALineIsRounded() {
        Amount total = Amount.of(500_055).plus(Amount.of(1_850_073));
        assertThat(WholeUnits.round(total, 2)).isEqualTo(Amount.of(2_350_100));
    }
}
