package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * Against the figures of OpenStax, Principles of Accounting, Volume 1, chapter 10: average stock is there the mean of first and
 * last. What is shown on a page is rounded by MoneyRow; the ratios themselves are like to nine digits.
 */
class StockRatiosTest {

    private static final Map<String, Double> GIVEN = GivenRows.scalars("retail-ratios-expected");
    private static final int YEAR = 365;

    @Test
    void theFirstYearOfThePublishedExample() {
        StockRatios year = new StockRatios(dollars(11_340), dollars(7_200), average(3_150, 8_955), YEAR);
        like(year.turn(), "stock_turn_year1");
        like(year.grossReturn(), "gmroi");
        like(year.daysInStock(), "days_in_inventory_year1");
        assertThat(GIVEN).containsEntry("average_inventory_cost", 6052.5);
    }

    @Test
    void theSecondYearOfThePublishedExample() {
        StockRatios year = new StockRatios(dollars(0), dollars(7_920), average(8_955, 9_850.50), YEAR);
        like(year.turn(), "stock_turn_year2");
        like(year.daysInStock(), "days_in_inventory_year2");
    }

    /** 4,140 of 11,340 is 36.51 %, on cost 57.5 %; sold 300 of 150 + 435 on offer is 51.28 %. */
    @Test
    void marginReturnAndSellThrough() {
        GivenRows.assertLike(4_140d / 11_340, GIVEN.get("gross_margin_ratio"), "margin");
        assertThat(Ratios.percent(414_000, 1_134_000)).isEqualTo(Percent.of("36.5"));
        GivenRows.assertLike(4_140d / 7_200, GIVEN.get("markup_on_cost"), "return on cost");
        assertThat(Ratios.percent(414_000, 720_000)).isEqualTo(Percent.of("57.5"));
        GivenRows.assertLike(
                Ratios.quotient(BigDecimal.valueOf(300), BigDecimal.valueOf(585))
                        .doubleValue(),
                GIVEN.get("sell_through_of_begin_plus_received"),
                "sell-through");
        assertThat(Ratios.percent(300, 585)).isEqualTo(Percent.of("51.3"));
    }

    /** Half a year with half the sales and the same stock turns as fast. */
    @Test
    void anyTimeIsBroughtToAYear() {
        StockRatios half = new StockRatios(dollars(500), dollars(300), new BigDecimal("100000"), 73);
        assertThat(half.turn()).isEqualByComparingTo("1.5");
        assertThat(half.grossReturn()).isEqualByComparingTo("1");
    }

    @Test
    void nothingToDivideByIsNoFigure() {
        StockRatios none = new StockRatios(dollars(500), dollars(0), BigDecimal.ZERO, YEAR);
        assertThat(none.turn()).isNull();
        assertThat(none.grossReturn()).isNull();
        assertThat(none.daysInStock()).isNull();
        assertThat(Ratios.percent(1, 0)).isNull();
        assertThat(Ratios.perHour(dollars(1), BigDecimal.ZERO)).isNull();
        assertThat(Ratios.perHour(Amount.of(2420), BigDecimal.valueOf(90))).isEqualTo(Amount.of(1613));
    }

    /** Invented: 10.00 on the 1st, 5.00 more on the 6th, gone on the 9th; ten days: 5 × 10 + 3 × 15 + 2 × 0. */
    @Test
    void theStockOfEachDayIsAddedUp() {
        LocalDate first = LocalDate.of(2025, 6, 1);
        StockOfPiece stock = StockOfPiece.of(
                new UUID(0, 1),
                first.minusDays(4),
                List.of(
                        new StockOfPiece.Change(first.minusDays(4), 1000),
                        new StockOfPiece.Change(first.plusDays(5), 500),
                        new StockOfPiece.Change(first.plusDays(8), -1500)),
                first,
                first.plusDays(9));
        assertThat(stock.unitDays()).isEqualByComparingTo("9500");
        assertThat(stock.closing()).isEqualTo(Amount.ZERO);
        assertThat(stock.age()).isEqualTo(13);
    }

    private static void like(BigDecimal value, String name) {
        GivenRows.assertLike(value.doubleValue(), GIVEN.get(name), name);
    }

    private static BigDecimal average(double first, double last) {
        return BigDecimal.valueOf((first + last) / 2).movePointRight(2);
    }

    private static Amount dollars(long whole) {
        return Amount.of(whole * 100);
    }
}
