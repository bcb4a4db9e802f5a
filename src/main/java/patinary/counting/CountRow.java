package patinary.counting;

import java.util.List;
import java.util.UUID;
import patinary.measure.Dimension;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog.Known;
import patinary.supplies.Wear;

/**
 * A supply as the counting page needs it. What the books think is left is not in it: a count is honest where she does not
 * know what it should be.
 *
 * @param value its id
 * @param text its name
 * @param line its supply line
 * @param packs its containers, the smallest first
 * @param steps whether it is counted in quarters of a container
 * @param weighs whether it can be counted on the scales
 */
record CountRow(UUID value, String text, String line, List<String> packs, boolean steps, boolean weighs) {

    /** Without the tools whose price is spread over their uses: one brush that is there says nothing about its wear. */
    static List<CountRow> of(List<Known> supplies) {
        return supplies.stream()
                .filter(supply -> supply.facts().wear() != Wear.BY_USE)
                .map(CountRow::of)
                .toList();
    }

    private static CountRow of(Known supply) {
        Supply.Facts facts = supply.facts();
        return new CountRow(
                supply.id(),
                facts.name(),
                supply.line().name(),
                facts.packs().stream().map(Supply.Named::name).toList(),
                facts.dimension() != Dimension.COUNT && !facts.packs().isEmpty(),
                facts.weighing().isEnough(facts.dimension()));
    }
}
