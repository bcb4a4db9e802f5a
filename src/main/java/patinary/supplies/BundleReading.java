package patinary.supplies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import patinary.money.Amount;
import patinary.web.Answers;

/** Reads the form of a bundle. */
final class BundleReading {

    private static final int NAME = 120;
    private static final int TYPED = 80;

    private final BundleForm form;
    private final Answers answers;
    private final Map<UUID, SupplyCatalog.Known> supplies;

    BundleReading(BundleForm form, Answers answers, List<SupplyCatalog.Known> supplies) {
        this.form = form;
        this.answers = answers;
        this.supplies = supplies.stream().collect(Collectors.toMap(SupplyCatalog.Known::id, Function.identity()));
    }

    /** What it says; harmless where an answer is wrong. */
    Bundle.Facts facts() {
        String name = answers.text("name", form.name, NAME, "supplies.bundle.error.name");
        Amount price = answers.amount("price", form.price);
        List<Bundle.Part> parts = new ArrayList<>();
        for (int i = 0; i < form.parts.size(); i++) {
            if (!form.parts.get(i).isEmpty()) {
                part("parts[" + i + "].", form.parts.get(i), parts).ifPresent(parts::add);
            }
        }
        if (parts.isEmpty() && !answers.anyWrong()) {
            answers.wrong("", "supplies.bundle.error.no-part");
        }
        return new Bundle.Facts(name, price, parts);
    }

    private Optional<Bundle.Part> part(String at, BundleForm.Line line, List<Bundle.Part> before) {
        UUID id = answers.id(at + "supply", line.supply, "supplies.bundle.error.supply");
        SupplyCatalog.Known supply = supplies.get(id);
        if (supply == null) {
            if (!line.supply.isBlank()) {
                answers.wrong(at + "supply", "supplies.bundle.error.supply");
            }
            return Optional.empty();
        }
        if (before.stream().anyMatch(part -> part.supplyId().equals(id))) {
            answers.wrong(at + "supply", "supplies.bundle.error.twice");
        }
        String typed = answers.note(at + "quantity", line.quantity, TYPED);
        return answers.quantity(at + "quantity", typed, supply.facts().dimension(), SupplyMeasures.of(supply.facts()))
                .filter(quantity -> {
                    if (quantity.signum() <= 0) {
                        answers.wrong(at + "quantity", "supplies.error.nothing");
                    }
                    return quantity.signum() > 0;
                })
                .map(quantity -> new Bundle.Part(before.size() + 1, id, typed, quantity));
    }
}
