package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * Worked by hand, except the published case: OpenStax, Principles of Accounting, Volume 1, multi-step income statement,
 * (293,500 − 180,000) ÷ 293,500 = 0.39, here to one decimal more.
 */
class EarningsTest {

    @ParameterizedTest
    @CsvSource({
        // price, shipping, refunds, fees, postage, packaging, cost | net, profit, margin, return on cost, per hour of
        // 90 minutes
        "4500, 600, 0, 540, 520, 0, 1620, 5100, 2420, 47.5, 149.4, 1613",
        "4500, 600, 0, 540, 520, 110, 1620, 5100, 2310, 45.3, 142.6, 1540",
        "4500, 600, 5100, 0, 520, 0, 0, 0, -520, '', '', -347",
        "2000, 0, 0, 0, 0, 0, 0, 2000, 2000, 100.0, '', 1333",
        "2000, 0, 0, 200, 0, 0, 2400, 2000, -600, -30.0, -25.0, -400",
        "29350000, 0, 0, 0, 0, 0, 18000000, 29350000, 11350000, 38.7, 63.1, 7566667"
    })
    void followsTheDefinitionsOfTheHandbook(
            long price,
            long shipping,
            long refunds,
            long fees,
            long postage,
            long packaging,
            long cost,
            long net,
            long profit,
            String margin,
            String returnOnCost,
            long perHour) {
        Earnings earnings = new Earnings(
                Amount.of(price),
                Amount.of(shipping),
                Amount.of(refunds),
                Amount.of(fees),
                Amount.of(postage),
                Amount.of(packaging),
                Amount.of(cost));

        assertThat(earnings.netSales()).isEqualTo(Amount.of(net));
        assertThat(earnings.profit()).isEqualTo(Amount.of(profit));
        assertThat(earnings.margin()
                        .map(Percent::value)
                        .map(BigDecimal::toPlainString)
                        .orElse(""))
                .isEqualTo(margin);
        assertThat(earnings.returnOnCost()
                        .map(Percent::value)
                        .map(BigDecimal::toPlainString)
                        .orElse(""))
                .isEqualTo(returnOnCost);
        assertThat(earnings.perHour(BigDecimal.valueOf(90))).contains(Amount.of(perHour));
    }

    @Test
    void hasNoFigureForAnHourWhereNoneWasNoted() {
        Amount zero = Amount.ZERO;
        Earnings earnings = new Earnings(Amount.of(4500), zero, zero, zero, zero, zero, Amount.of(1000));

        assertThat(earnings.perHour(BigDecimal.ZERO)).isEmpty();
    }
}
