package patinary.buying;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.buying.ReceiptForm.LineForm;
import patinary.measure.Unit;
import patinary.supplies.PotsPutAside;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyMeasures;
import patinary.supplies.Wear;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;

/** Reads which supply a line brought and how much of it one holds: a pack by its name, or a quantity as typed. */
@Component
@Transactional(readOnly = true)
class SupplyReader {

    private static final String STROKE = "/";

    private static final Pattern WISH = Pattern.compile("([1-9][0-9]{0,4})\\*([0-9a-f-]{36})(?:/(.+))?");

    /**
     * What one of the line is.
     *
     * @param content in the supply's base unit
     * @param isExpense whether it is a tool whose price is an expense at once
     */
    record Bought(UUID supplyId, String name, BigDecimal content, boolean isExpense) {}

    private final Supplies supplies;
    private final PotsPutAside pots;

    SupplyReader(Supplies supplies, PotsPutAside pots) {
        this.supplies = supplies;
        this.pots = pots;
    }

    /** Each supply's packs, and the supply itself for another content. */
    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        for (Supply supply : toBuy()) {
            String name = supply.name();
            supply.packs()
                    .forEach(pack ->
                            choices.add(Choice.named(supply.id() + STROKE + pack.name(), name + ": " + pack.name())));
            choices.add(Choice.named(supply.id().toString(), name));
        }
        return List.copyOf(choices);
    }

    /** Each supply once. */
    List<Choice> plainChoices() {
        return toBuy().stream()
                .map(supply -> Choice.named(supply.id().toString(), supply.name()))
                .toList();
    }

    /** Without the pots that were mixed and put aside. */
    private List<Supply> toBuy() {
        Set<UUID> kept = pots.ids();
        return supplies.findAllByOrderByName().stream()
                .filter(supply -> !kept.contains(supply.id()))
                .toList();
    }

    /** A line that buys so many packs of a supply; nothing where there is no such supply. */
    Optional<LineForm> wished(String wish) {
        Matcher read = WISH.matcher(wish);
        if (!read.matches()) {
            return Optional.empty();
        }
        return Ids.read(read.group(2)).flatMap(supplies::findById).map(supply -> {
            LineForm line = new LineForm();
            line.kind = "SUPPLY";
            line.title = supply.facts().name();
            line.quantity = read.group(1);
            line.supply = supply.id() + (read.group(3) == null ? "" : STROKE + read.group(3));
            return line;
        });
    }

    /** The supplies that these lines brought. */
    Map<UUID, Supply> of(List<ReceiptLine> lines) {
        List<UUID> ids = lines.stream()
                .map(ReceiptLine::supplyId)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return ids.isEmpty()
                ? Map.of()
                : supplies.findAllByIdIn(ids).stream().collect(Collectors.toMap(Supply::id, Function.identity()));
    }

    /** Fills in what {@link #read} reads back to the same. */
    static void fill(LineForm form, ReceiptLine line, Map<UUID, Supply> bought) {
        if (line.supplyId() == null || line.content() == null) {
            return;
        }
        BigDecimal content = line.content();
        form.supply = line.supplyId().toString();
        Optional.ofNullable(bought.get(line.supplyId())).map(Supply::facts).ifPresent(facts -> {
            Optional<Supply.Named> pack = facts.packs().stream()
                    .filter(named -> named.quantity().compareTo(content) == 0)
                    .findFirst();
            pack.ifPresent(named -> form.supply += STROKE + named.name());
            if (pack.isEmpty()) {
                form.content = content.stripTrailingZeros().toPlainString() + " "
                        + Unit.base(facts.dimension()).code();
            }
        });
    }

    Optional<Bought> read(Answers answers, String at, LineForm form) {
        String[] answer = form.supply.split(STROKE, 2);
        Optional<Supply> supply = answers.optionalId(at + "supply", answer[0], "buying.error.supply")
                .flatMap(supplies::findById);
        if (supply.isEmpty()) {
            answers.wrong(at + "supply", "buying.error.supply");
            return Optional.empty();
        }
        if (pots.ids().contains(supply.get().id())) {
            answers.wrong(at + "supply", "buying.error.supply-mixed");
        }
        Supply.Facts facts = supply.get().facts();
        Optional<BigDecimal> content = form.content.isBlank()
                ? pack(facts, answer.length > 1 ? answer[1] : "")
                : answers.quantity(at + "content", form.content, facts.dimension(), SupplyMeasures.of(facts));
        if (form.content.isBlank() && content.isEmpty()) {
            answers.wrong(at + "content", "buying.error.content");
        }
        content.filter(quantity -> quantity.signum() <= 0)
                .ifPresent(quantity -> answers.wrong(at + "content", "buying.error.content"));
        return Optional.of(new Bought(
                supply.get().id(), facts.name(), content.orElse(BigDecimal.ONE), facts.wear() == Wear.AT_ONCE));
    }

    private static Optional<BigDecimal> pack(Supply.Facts facts, String name) {
        return facts.packs().stream()
                .filter(pack -> pack.name().equals(name))
                .map(Supply.Named::quantity)
                .findFirst();
    }
}
