package patinary.supplies;

import java.util.ArrayList;
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

    public static List<NamedMeasure> of(Supply.Facts supply) {
        return named(supply).stream()
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
