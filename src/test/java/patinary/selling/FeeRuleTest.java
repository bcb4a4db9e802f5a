package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;

class FeeRuleTest {

    private static final FeeRule UNTIL_MAY = new FeeRule(LocalDate.of(2025, 1, 1), Percent.of("10"), Amount.of(30));
    private static final FeeRule FROM_JUNE = new FeeRule(LocalDate.of(2025, 6, 1), Percent.of("12.5"), Amount.of(25));

    /** By hand: 10 % of 56.00 is 5.60, and 0.30. */
    @Test
    void isAPercentageOfPriceAndShippingAndAFixedAmount() {
        assertThat(UNTIL_MAY.on(Amount.of(5600))).isEqualTo(Amount.of(590));
    }

    /** By hand: 12.5 % of 0.20 is 2.5 cents, half up 3. */
    @Test
    void roundsHalfUpOnce() {
        assertThat(FROM_JUNE.on(Amount.of(20))).isEqualTo(Amount.of(28));
    }

    @Test
    void holdsFromItsDayUntilTheNextRuleBegins() {
        List<FeeRule> rules = List.of(FROM_JUNE, UNTIL_MAY);
        assertThat(FeeRule.on(LocalDate.of(2024, 12, 31), rules)).isEmpty();
        assertThat(FeeRule.on(LocalDate.of(2025, 1, 1), rules)).contains(UNTIL_MAY);
        assertThat(FeeRule.on(LocalDate.of(2025, 5, 31), rules)).contains(UNTIL_MAY);
        assertThat(FeeRule.on(LocalDate.of(2025, 6, 1), rules)).contains(FROM_JUNE);
    }
}
