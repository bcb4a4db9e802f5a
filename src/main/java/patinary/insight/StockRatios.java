package patinary.insight;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What a stock brought in for the money that lay in it, as of a year: docs/handbook/money-by-group.md has the formulas and the
 * published example. Null where no money lay in the stock, or nothing was sold.
 *
 * @param netSales net sales of the days
 * @param costOfSales what these sales took out of stock
 * @param averageStock the mean stock at cost over the days, in minor units
 * @param days how many days; a figure of fewer or more is brought to that of 365
 */
record StockRatios(Amount netSales, Amount costOfSales, BigDecimal averageStock, int days) {

    private static final BigDecimal YEAR = BigDecimal.valueOf(365);

    /** Gross margin of a year for each unit of money in the stock. */
    @Nullable
    BigDecimal grossReturn() {
        return ofYear(netSales.minus(costOfSales));
    }

    /** How often in a year the stock was sold, both at cost. */
    @Nullable
    BigDecimal turn() {
        return ofYear(costOfSales);
    }

    /** How many days' sales lay in the stock. */
    @Nullable
    BigDecimal daysInStock() {
        return Ratios.quotient(
                averageStock.multiply(BigDecimal.valueOf(days)), BigDecimal.valueOf(costOfSales.minor()));
    }

    private @Nullable BigDecimal ofYear(Amount amount) {
        BigDecimal quotient = Ratios.quotient(BigDecimal.valueOf(amount.minor()), averageStock);
        return quotient == null
                ? null
                : quotient.multiply(YEAR).divide(BigDecimal.valueOf(days), MathContext.DECIMAL64);
    }
}
