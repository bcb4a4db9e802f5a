package patinary.insight;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.insight.MoneyFacts.PieceSale;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * The money of one group of pieces over some days.
 *
 * @param name the group; empty for the pieces that have none
 * @param sales what was sold, and what came back
 * @param stock in what money lay; null where stock belongs to no such group
 * @param sold different pieces sold that did not come back
 * @param parts from price to profit
 * @param minutes bench minutes on the pieces sold
 * @param days how many days it is of
 */
record MoneyRow(
        String name,
        List<PieceSale> sales,
        @Nullable List<StockOfPiece> stock,
        int sold,
        SaleParts parts,
        BigDecimal minutes,
        int days) {

    private static final int SHOWN = 2;

    static MoneyRow of(
            String name, List<PieceSale> sales, @Nullable List<StockOfPiece> stock, MoneyFacts facts, int days) {
        Set<UUID> sold = new HashSet<>();
        sales.stream().filter(sale -> !sale.cameBack()).forEach(sale -> sold.add(sale.piece()));
        BigDecimal minutes = sold.stream()
                .map(piece -> facts.minutes().getOrDefault(piece, BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        SaleParts parts = sales.stream().map(PieceSale::parts).collect(SaleParts.sum());
        return new MoneyRow(name, sales, stock, sold.size(), parts, minutes, days);
    }

    public Amount profit() {
        return parts.profit();
    }

    /** What supplies put on the pieces at the bench, as a part of their landed cost. */
    Amount work() {
        return sales.stream().map(PieceSale::work).collect(Amount.sum());
    }

    /** What came back: net sales less fees, postage and packaging. */
    Amount back() {
        return profit().plus(parts.cost());
    }

    /** Profit of net sales. */
    public @Nullable Percent margin() {
        return Ratios.percent(profit().minor(), parts.net().minor());
    }

    /** Profit on landed cost. */
    public @Nullable Percent returnOnCost() {
        return Ratios.percent(profit().minor(), parts.cost().minor());
    }

    public @Nullable Amount perHour() {
        return Ratios.perHour(profit(), minutes);
    }

    public long wholeMinutes() {
        return Ratios.wholeMinutes(minutes);
    }

    /** Gross margin return on stock, as of a year, with two decimals. */
    public @Nullable BigDecimal grossReturn() {
        StockRatios ratios = ratios();
        return ratios == null ? null : shown(ratios.grossReturn());
    }

    /** Stock turn, as of a year, with two decimals. */
    public @Nullable BigDecimal turn() {
        StockRatios ratios = ratios();
        return ratios == null ? null : shown(ratios.turn());
    }

    private @Nullable StockRatios ratios() {
        BigDecimal average = averageStock();
        return average == null ? null : new StockRatios(parts.net(), parts.cost(), average, days);
    }

    /** The mean over the days of what lay in stock at the end of each, in minor units. */
    private @Nullable BigDecimal averageStock() {
        return stock == null
                ? null
                : stock.stream()
                        .map(StockOfPiece::unitDays)
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .divide(BigDecimal.valueOf(days), MathContext.DECIMAL64);
    }

    /** Landed cost of what is still there on the last day. */
    public @Nullable Amount tied() {
        return stock == null ? null : stock.stream().map(StockOfPiece::closing).collect(Amount.sum());
    }

    /** How long the money lies there: days since found, weighed by cost, half up; null where none lies. */
    public @Nullable BigDecimal tiedDays() {
        Amount tied = tied();
        if (stock == null || tied == null || !tied.isPositive()) {
            return null;
        }
        BigDecimal weighed = stock.stream()
                .map(one -> BigDecimal.valueOf(one.closing().minor()).multiply(BigDecimal.valueOf(one.age())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return weighed.divide(BigDecimal.valueOf(tied.minor()), 0, RoundingMode.HALF_UP);
    }

    private static @Nullable BigDecimal shown(@Nullable BigDecimal ratio) {
        return ratio == null ? null : ratio.setScale(SHOWN, RoundingMode.HALF_UP);
    }
}
