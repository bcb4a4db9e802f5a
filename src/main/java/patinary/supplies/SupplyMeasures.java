package patinary.supplies;

import java.util.List;
import java.util.stream.Stream;
import patinary.measure.NamedMeasure;
import patinary.measure.Quantity;

/** The names under which quantities of a supply may be typed: her own measures, and the packs it is bought in. */
public final class SupplyMeasures {

    private SupplyMeasures() {}

    public static List<NamedMeasure> of(Supply.Facts supply) {
        return Stream.concat(supply.measures().stream(), supply.packs().stream())
                .map(named -> new NamedMeasure(named.name(), Quantity.ofBase(named.quantity(), supply.dimension())))
                .toList();
    }
}
