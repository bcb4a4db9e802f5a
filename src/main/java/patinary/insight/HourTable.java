package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.insight.MoneyFacts.PieceSale;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.Aims;

/**
 * What her hours really earned, month by month: docs/handbook/her-hour.md.
 *
 * @param months every month from the first to the last, also one in which nothing happened
 * @param whole all of them together
 */
record HourTable(List<Month> months, Month whole) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * What is known of the months.
     *
     * @param profits of the whole shop by the books, by month
     * @param minutes at the bench, by the month in which they were worked
     */
    record Facts(Map<YearMonth, Amount> profits, Map<YearMonth, BigDecimal> minutes, MoneyFacts pieces) {}

    /**
     * One month.
     *
     * @param month null for all together
     * @param profit of the whole shop by the books, from which the tax figure is made
     * @param minutes worked at the bench in it
     * @param truly that profit less those minutes at her rate
     * @param sold pieces sold in it that did not come back
     * @param reached how many of them left what she aims at after her time
     * @param soldProfit their profit
     * @param soldMinutes all minutes ever worked on them
     */
    record Month(
            @Nullable YearMonth month,
            Amount profit,
            BigDecimal minutes,
            Amount truly,
            int sold,
            int reached,
            Amount soldProfit,
            BigDecimal soldMinutes) {

        /** What an hour at the bench brought by the books; null without one. */
        public @Nullable Amount perHour() {
            return Ratios.perHour(profit, minutes);
        }

        /** What an hour on the pieces sold brought; null without one. */
        public @Nullable Amount perSoldHour() {
            return Ratios.perHour(soldProfit, soldMinutes);
        }

        public long wholeMinutes() {
            return Ratios.wholeMinutes(minutes);
        }

        /** Its last day, for the page; null for all together. */
        public @Nullable LocalDate last() {
            return month == null ? null : month.atEndOfMonth();
        }

        /** Its first day, for the page; null for all together. */
        public @Nullable LocalDate first() {
            return month == null ? null : month.atDay(1);
        }
    }

    static HourTable of(Facts facts, Period period, Aims aims, Amount rate) {
        Aim aim = new Aim(aims, rate, facts.pieces().minutes());
        Map<YearMonth, List<PieceSale>> sold =
                facts.pieces().sales().stream().collect(Collectors.groupingBy(sale -> YearMonth.from(sale.day())));
        List<Month> months = new ArrayList<>();
        YearMonth end = YearMonth.from(period.last());
        for (YearMonth m = YearMonth.from(period.first()); !m.isAfter(end); m = m.plusMonths(1)) {
            months.add(month(
                    m,
                    facts.profits().getOrDefault(m, Amount.ZERO),
                    facts.minutes().getOrDefault(m, BigDecimal.ZERO),
                    MoneyRow.of("", sold.getOrDefault(m, List.of()), null, facts.pieces(), 1),
                    aim));
        }
        Amount profit = months.stream().map(Month::profit).collect(Amount.sum());
        BigDecimal minutes = months.stream().map(Month::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
        MoneyRow all = MoneyRow.of("", facts.pieces().sales(), null, facts.pieces(), 1);
        return new HourTable(List.copyOf(months), month(null, profit, minutes, all, aim));
    }

    private static Month month(@Nullable YearMonth month, Amount profit, BigDecimal minutes, MoneyRow pieces, Aim aim) {
        List<PieceSale> stayed =
                pieces.sales().stream().filter(sale -> !sale.cameBack()).toList();
        int reached = (int) stayed.stream().filter(sale -> aim.reached(sale)).count();
        return new Month(
                month,
                profit,
                minutes,
                profit.minus(aim.work(minutes)),
                stayed.size(),
                reached,
                pieces.profit(),
                pieces.minutes());
    }

    /** What she aims at, and what her time is worth to her. */
    private record Aim(Aims aims, Amount rate, Map<UUID, BigDecimal> minutes) {

        Amount work(BigDecimal minutes) {
            return Ratios.worth(minutes, rate);
        }

        boolean reached(PieceSale sale) {
            SaleParts parts = sale.parts();
            Percent wished = aims.targetReturn();
            Amount target =
                    wished == null ? aims.target() : parts.cost().part(wished.value(), HUNDRED, RoundingMode.CEILING);
            Amount work = work(minutes.getOrDefault(sale.piece(), BigDecimal.ZERO));
            return parts.profit().minus(work).compareTo(target) >= 0;
        }
    }
}
