package patinary.counting;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import patinary.supplies.SupplyCatalog.Known;

/** How fast a supply goes, from the uses of the last half year as the counts settled them, and from what was sold. */
final class Pace {

    /** Longer ago says little about next month; common practice, no source. */
    private static final int WEEKS = 26;

    private static final double WEEK = 7;

    private Pace() {}

    /** One sale from the retail shelf. */
    record Sold(LocalDate soldOn, BigDecimal quantity) {}

    /** The first day that counts. */
    static LocalDate from(LocalDate today) {
        return today.minusWeeks(WEEKS).plusDays(1);
    }

    /**
     * @param known since when the supply is watched: its first movement
     * @param today the day it is reckoned on, which counts
     */
    static Optional<UseRate> of(
            Known supply, CountFacts.Facts facts, List<Sold> sold, LocalDate known, LocalDate today) {
        LocalDate half = from(today);
        LocalDate from = known.isAfter(half) ? known : half;
        double weeks = (ChronoUnit.DAYS.between(from, today) + 1) / WEEK;
        List<Span> spans = Spans.of(supply, facts.counts(), facts.taken());
        DoubleStream bench = facts.taken().stream()
                .filter(use -> isWithin(use.usedOn(), from, today))
                .mapToDouble(
                        use -> use.quantity().doubleValue() * (use.estimated() ? settled(spans, use.usedOn()) : 1));
        DoubleStream shelf = sold.stream()
                .filter(sale -> isWithin(sale.soldOn(), from, today))
                .mapToDouble(sale -> sale.quantity().doubleValue());
        return UseRate.of(DoubleStream.concat(bench, shelf).toArray(), weeks);
    }

    /** By how much the next count stretched the uses noted on a day. */
    private static double settled(List<Span> spans, LocalDate day) {
        return spans.stream()
                .filter(span -> !day.isAfter(span.until()))
                .filter(span -> span.since() == null || day.isAfter(span.since()))
                .findFirst()
                .filter(Span::tells)
                .map(Span::stretch)
                .orElse(1.0);
    }

    private static boolean isWithin(LocalDate day, LocalDate from, LocalDate until) {
        return !day.isBefore(from) && !day.isAfter(until);
    }
}
