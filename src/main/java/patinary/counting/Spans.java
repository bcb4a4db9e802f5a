package patinary.counting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Measures;
import patinary.measure.NamedMeasure;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog.Known;

/** Cuts what was taken by eye of one supply into spans from count to count. */
final class Spans {

    private static final int SCALE = 14;

    private Spans() {}

    /** One count of the supply on the bench; difference is what was counted less what the books had thought. */
    record Count(
            UUID countId,
            LocalDate countedOn,
            BigDecimal difference,
            boolean waste,
            @Nullable BigDecimal stepQuantity) {}

    /** One use on the bench as it was typed. */
    record Taken(LocalDate usedOn, String typed, BigDecimal quantity, boolean estimated) {}

    /**
     * @param counts in canonical order; a count stands at the end of its day
     * @param taken in any order
     */
    static List<Span> of(Known supply, List<Count> counts, List<Taken> taken) {
        List<Span> spans = new ArrayList<>();
        @Nullable Count before = null;
        for (Count count : counts) {
            spans.add(span(supply, before, count, taken));
            before = count;
        }
        return List.copyOf(spans);
    }

    private static Span span(Known supply, @Nullable Count before, Count count, List<Taken> taken) {
        @Nullable LocalDate since = before == null ? null : before.countedOn();
        List<Taken> inIt = taken.stream()
                .filter(Taken::estimated)
                .filter(one -> since == null || one.usedOn().isAfter(since))
                .filter(one -> !one.usedOn().isAfter(count.countedOn()))
                .toList();
        double noted =
                inIt.stream().mapToDouble(one -> one.quantity().doubleValue()).sum();
        double step = Math.hypot(step(before), step(count)) / Math.sqrt(2);
        return new Span(
                count.countId(),
                since,
                count.countedOn(),
                inIt.stream().map(one -> use(supply, one)).toList(),
                noted,
                Math.max(0, noted - count.difference().doubleValue()),
                step,
                count.waste());
    }

    private static double step(@Nullable Count count) {
        return count == null || count.stepQuantity() == null
                ? 0
                : count.stepQuantity().doubleValue();
    }

    /** Told in a measure, it is as many of it as the measure was large on that day; the measure counts as it is now. */
    private static Span.Use use(Known supply, Taken taken) {
        Optional<NamedMeasure> then = Measures.toldIn(taken.typed(), supply.measuresOn(taken.usedOn()))
                .filter(measure -> now(supply, measure.name()).isPresent());
        if (then.isEmpty()) {
            return new Span.Use("", 1, taken.quantity().doubleValue());
        }
        String name = then.get().name();
        BigDecimal size = then.get().quantity().value();
        BigDecimal times = taken.quantity().divide(size, SCALE, RoundingMode.HALF_UP);
        return new Span.Use(
                name,
                times.doubleValue(),
                times.multiply(now(supply, name).orElse(size)).doubleValue());
    }

    private static Optional<BigDecimal> now(Known supply, String measure) {
        return supply.facts().measures().stream()
                .filter(named -> named.name().equals(measure))
                .map(Supply.Named::quantity)
                .findFirst();
    }
}
