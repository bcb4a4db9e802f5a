package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;

/** Gross margin as a part of net sales is common practice, no source; the figures are worked by hand. */
class SaleFiguresTest {

    /** 50.00 + 6.00 - 5.90 - 6.00 - 18.00 = 26.10; of 56.00 46.6 %; of 18.00 145 %; in 90 minutes 17.40 an hour. */
    @Test
    void isWorkedOutAsTheHandbookSays() {
        SaleFigures figures = figures(5000, 600, 0, 590, 600, 0, 1800, 90);
        assertThat(figures.net()).isEqualTo(Amount.of(5600));
        assertThat(figures.profit()).isEqualTo(Amount.of(2610));
        assertThat(figures.margin()).isEqualTo(Percent.of("46.6"));
        assertThat(figures.returnOnCost()).isEqualTo(Percent.of("145.0"));
        assertThat(figures.perHour()).isEqualTo(Amount.of(1740));
    }

    /** 50.00 + 6.00 - 5.90 - 1.55 - 18.00 = 30.55; of 56.00 54.6 %; of 18.00 169.7 %; in 90 minutes 20.37 an hour. */
    @Test
    void takesOffWhatItWasPackedIn() {
        SaleFigures figures = figures(5000, 600, 0, 590, 0, 155, 1800, 90);
        assertThat(figures.profit()).isEqualTo(Amount.of(3055));
        assertThat(figures.margin()).isEqualTo(Percent.of("54.6"));
        assertThat(figures.returnOnCost()).isEqualTo(Percent.of("169.7"));
        assertThat(figures.perHour()).isEqualTo(Amount.of(2037));
    }

    @Test
    void knowsNoRatioWithoutNetSalesCostOrHours() {
        SaleFigures figures = figures(1000, 0, 1000, 100, 0, 0, 0, 0);
        assertThat(figures.profit()).isEqualTo(Amount.of(-100));
        assertThat(figures.margin()).isNull();
        assertThat(figures.returnOnCost()).isNull();
        assertThat(figures.perHour()).isNull();
    }

    @Test
    void addsUp() {
        SaleFigures sum = figures(1, 2, 3, 4, 5, 6, 7, 8).plus(figures(10, 20, 30, 40, 50, 60, 70, 80));
        assertThat(sum).isEqualTo(figures(11, 22, 33, 44, 55, 66, 77, 88));
    }

    private static SaleFigures figures(
            long price, long shipping, long refund, long fee, long postage, long packaging, long cost, long minutes) {
        return new SaleFigures(
                Amount.of(price),
                Amount.of(shipping),
                Amount.of(refund),
                Amount.of(fee),
                Amount.of(postage),
                Amount.of(packaging),
                Amount.of(cost),
                BigDecimal.valueOf(minutes));
    }
}
