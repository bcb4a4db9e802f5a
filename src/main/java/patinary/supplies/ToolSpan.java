package patinary.supplies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a tool did between two counts of it: from one worn out to the next.
 *
 * @param first the day of its first use; null where it was not used
 * @param until the day of the count that ends it; null where it is still going on
 * @param uses how many uses of it there were
 * @param worn how many of it that wore out, as the books have it: 1 for a brush; below 1 while it goes on
 * @param waste whether it was lost or broken, which tells nothing about how long it lasts
 */
record ToolSpan(@Nullable LocalDate first, @Nullable LocalDate until, BigDecimal uses, BigDecimal worn, boolean waste) {

    /** A count of it on the bench; it stands at the end of its day. */
    record Count(LocalDate countedOn, boolean waste) {}

    /** The uses of one day. */
    record Used(LocalDate docDate, BigDecimal uses) {}

    /** What uses and counts of one day took of it, in tools. */
    record Worn(LocalDate docDate, BigDecimal quantity) {}

    /** Whether it says how long one lasts. */
    boolean tells() {
        return until != null && !waste && uses.signum() > 0 && worn.signum() > 0;
    }

    /** How many uses one of it lasted: a whole number, rounded half up. */
    BigDecimal lasted() {
        return uses.divide(worn, 0, RoundingMode.HALF_UP);
    }

    /**
     * The spans, the last of them still going on.
     *
     * @param counts in canonical order
     */
    static List<ToolSpan> of(List<Count> counts, List<Used> used, List<Worn> worn) {
        List<ToolSpan> spans = new ArrayList<>();
        @Nullable LocalDate since = null;
        for (Count count : counts) {
            spans.add(span(since, count.countedOn(), count.waste(), used, worn));
            since = count.countedOn();
        }
        spans.add(span(since, null, false, used, worn));
        return List.copyOf(spans);
    }

    private static ToolSpan span(
            @Nullable LocalDate since, @Nullable LocalDate until, boolean waste, List<Used> used, List<Worn> worn) {
        List<Used> inIt =
                used.stream().filter(one -> isIn(one.docDate(), since, until)).toList();
        return new ToolSpan(
                inIt.stream().map(Used::docDate).min(LocalDate::compareTo).orElse(null),
                until,
                inIt.stream().map(Used::uses).reduce(BigDecimal.ZERO, BigDecimal::add),
                worn.stream()
                        .filter(one -> isIn(one.docDate(), since, until))
                        .map(Worn::quantity)
                        .reduce(BigDecimal.ZERO, BigDecimal::add),
                waste);
    }

    private static boolean isIn(LocalDate day, @Nullable LocalDate since, @Nullable LocalDate until) {
        return (since == null || day.isAfter(since)) && (until == null || !day.isAfter(until));
    }
}
