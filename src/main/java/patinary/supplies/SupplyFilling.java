package patinary.supplies;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.money.ShopCurrency;

/** Writes a stored supply into its form. */
final class SupplyFilling {

    private SupplyFilling() {}

    static SupplyForm of(SupplyCatalog.Known supply, ShopCurrency currency) {
        Supply.Facts facts = supply.facts();
        SupplyForm form = new SupplyForm();
        form.version = supply.version();
        form.line = facts.lineId().toString();
        form.name = facts.name();
        form.dimension = facts.dimension().name();
        form.retailPrice = facts.retailPrice() == null ? "" : currency.plain(facts.retailPrice());
        form.low = facts.low() == null ? "" : QuantityWords.typed(facts.low(), facts.dimension());
        form.emptyGrams = weight(facts.weighing().emptyGrams());
        form.gramsPerMl = number(facts.weighing().gramsPerMl());
        fill(form.packs, facts.packs(), facts.dimension());
        fill(form.measures, ownMeasures(facts), facts.dimension());
        if (facts.wear() != null) {
            form.wear = facts.wear().name();
        }
        ToolUse.size(facts).ifPresent(size -> form.uses = Integer.toString(ToolUse.lasts(size)));
        form.sheet = facts.sheet() == null ? "" : facts.sheet().sides().typed();
        facts.motifs().forEach(motif -> {
            SupplyForm.Line line = new SupplyForm.Line();
            line.name = motif.name();
            line.quantity = motif.sides().typed();
            form.motifs.add(line);
        });
        form.motifs.add(new SupplyForm.Line());
        fill(form, facts.limits());
        return form;
    }

    private static void fill(SupplyForm form, Limits limits) {
        form.daysOpened = limits.daysOpened() == null ? "" : limits.daysOpened().toString();
        form.daysMixed = limits.daysMixed() == null ? "" : limits.daysMixed().toString();
        form.most = limits.most() == null ? "" : number(limits.most().value());
        form.mostNote = limits.mostNote();
    }

    /** A tool's use is told by how many it lasts. */
    private static List<Supply.Named> ownMeasures(Supply.Facts facts) {
        return facts.measures().stream()
                .filter(measure ->
                        facts.wear() != Wear.BY_USE || !measure.name().equals(ToolUse.MEASURE))
                .toList();
    }

    private static String weight(@Nullable BigDecimal grams) {
        return grams == null ? "" : QuantityWords.typed(grams, Dimension.MASS);
    }

    private static String number(@Nullable BigDecimal number) {
        return number == null ? "" : number.stripTrailingZeros().toPlainString();
    }

    private static void fill(List<SupplyForm.Line> lines, List<Supply.Named> named, Dimension dimension) {
        for (Supply.Named one : named) {
            SupplyForm.Line line = new SupplyForm.Line();
            line.name = one.name();
            line.quantity = QuantityWords.typed(one.quantity(), dimension);
            lines.add(line);
        }
        lines.add(new SupplyForm.Line());
    }
}
