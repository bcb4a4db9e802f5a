package patinary.supplies;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import patinary.measure.Dimension;
import patinary.measure.NamedMeasure;
import patinary.measure.Quantity;

/**
 * The names under which quantities of a supply may be typed: her own measures, the packs it is bought in, the motifs of
 * its sheet, and the sheet itself.
 */
public final class SupplyMeasures {

    /** What a whole sheet is called where she has given the word no meaning of her own. */
    private static final String SHEET = "sheet";

    private SupplyMeasures() {}

    /**
     * The same as they were on a day: a measure that was corrected later has the size it had then.
     *
     * @param changes of the supply's measures
     */
    public static List<NamedMeasure> on(Supply.Facts supply, List<MeasureChange> changes, LocalDate day) {
        return of(supply.withMeasures(supply.measures().stream()
                .map(measure -> sizeOn(measure, changes, day))
                .toList()));
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
        return named(supply).stream()
                // Forms and archives refuse a pack called "500 ml"; one that a shop has from before needs no name, as
                // it
                // can be typed as it is.
                .filter(named -> NamedMeasure.isName(named.name()))
                .map(named -> new NamedMeasure(named.name(), Quantity.ofBase(named.quantity(), supply.dimension())))
                .toList();
    }

    /** The same as names with quantities in the base unit; of two with one name the first counts. */
    public static List<Supply.Named> named(Supply.Facts supply) {
        List<Supply.Named> all = new ArrayList<>(Stream.concat(supply.measures().stream(), supply.packs().stream())
                .toList());
        if (supply.dimension() == Dimension.AREA) {
            supply.motifs()
                    .forEach(motif ->
                            all.add(new Supply.Named(motif.name(), motif.sides().area())));
            if (supply.sheet() != null) {
                all.add(new Supply.Named(SHEET, supply.sheet().sides().area()));
            }
        }
        return all;
    }
}
