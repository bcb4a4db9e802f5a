package patinary.finishes;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.measure.Dimension;
import patinary.supplies.SupplyCatalog;
import patinary.web.Choice;

/** What the pages of finishes show. */
@Component
class FinishPage {

    /** A supply of a step, for reading. */
    record NeedRow(String name, String typed, String per) {}

    /** A supply of an estimate, for reading. */
    record LineRow(
            UUID supply,
            String name,
            Dimension dimension,
            @Nullable BigDecimal quantity,
            @Nullable Long costMinor,
            @Nullable BigDecimal missing,
            boolean last) {}

    private final SupplyCatalog catalog;
    private final CautionBook cautions;

    FinishPage(SupplyCatalog catalog, CautionBook cautions) {
        this.catalog = catalog;
        this.cautions = cautions;
    }

    /** The steps with their supplies, and what to look out for. */
    void finish(Model model, FinishBook.Kept kept) {
        Map<UUID, SupplyCatalog.Known> supplies = supplies();
        Finish finish = kept.finish();
        model.addAttribute("kept", kept);
        model.addAttribute("finish", finish);
        model.addAttribute(
                "needs",
                finish.needs().stream()
                        .collect(Collectors.groupingBy(
                                Finish.Need::step,
                                Collectors.mapping(need -> row(need, supplies), Collectors.toList()))));
        List<String> words = Stream.concat(
                        finish.words().stream(),
                        finish.supplies().stream().map(supplies::get).map(SupplyCatalog.Known::title))
                .toList();
        model.addAttribute("cautions", cautions.about(finish.cautions(), words));
    }

    void form(Model model, FinishForm form) {
        model.addAttribute("form", form);
        model.addAttribute("supplies", catalog.choices());
        model.addAttribute("pers", pers());
        model.addAttribute(
                "stepNumbers",
                IntStream.rangeClosed(1, form.steps.size())
                        .mapToObj(number -> Choice.named(Integer.toString(number), Integer.toString(number)))
                        .toList());
        model.addAttribute("allCautions", cautions.all());
    }

    List<LineRow> lines(Estimate estimate) {
        Map<UUID, SupplyCatalog.Known> supplies = supplies();
        return estimate.lines().stream()
                .map(line -> {
                    SupplyCatalog.Known supply = supplies.get(line.supplyId());
                    return new LineRow(
                            line.supplyId(),
                            supply.title(),
                            supply.facts().dimension(),
                            line.quantity(),
                            line.costMinor(),
                            line.missing().signum() > 0 ? line.missing() : null,
                            line.isLast());
                })
                .toList();
    }

    private static List<Choice> pers() {
        return Stream.of(Per.values())
                .map(per -> Choice.said(per.name(), "finishes.per." + per.name()))
                .toList();
    }

    private Map<UUID, SupplyCatalog.Known> supplies() {
        return catalog.all().stream().collect(Collectors.toMap(SupplyCatalog.Known::id, Function.identity()));
    }

    private static NeedRow row(Finish.Need need, Map<UUID, SupplyCatalog.Known> supplies) {
        return new NeedRow(
                supplies.get(need.supplyId()).title(),
                need.typed(),
                Per.of(need.coverage().perArea()).name());
    }
}
