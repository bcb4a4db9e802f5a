package patinary.supplies;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import patinary.measure.NamedMeasure;
import patinary.measure.Quantity;

/** The names under which quantities of a supply may be typed: her own measures, and the packs it is bought in. */
public final class SupplyMeasures {

    private SupplyMeasures() {}

    /**
     * The same as they were on a day: a measure that was corrected later has the size it had then.
     *
     * @param changes of the supply's measures
     */
    public static List<NamedMeasure> on(Supply.Facts supply, List<MeasureChange> changes, LocalDate day) {
        return Stream.concat(
                        supply.measures().stream().map(measure -> sizeOn(measure, changes, day)),
                        supply.packs().stream())
                .map(named -> new NamedMeasure(named.name(), Quantity.ofBase(named.quantity(), supply.dimension())))
                .toList();
    }

    private static Supply.Named sizeOn(Supply.Named measure, List<MeasureChange> changes, LocalDate day) {
        return changes.stream()
                .filter(change -> change.name().equals(measure.name()))
                .filter(change -> change.fromDay().isAfter(day))
                .min(Comparator.comparing(MeasureChange::fromDay))
                .map(change -> new Supply.Named(measure.name(), change.was()))
                .orElse(measure);
    }

    public static List<NamedMeasure> of(Supply.Facts supply) {
        return Stream.concat(supply.measures().stream(), supply.packs().stream())
                .map(named -> new NamedMeasure(named.name(), Quantity.ofBase(named.quantity(), supply.dimension())))
                .toList();
    }
}
