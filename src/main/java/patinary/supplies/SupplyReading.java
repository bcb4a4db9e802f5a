package patinary.supplies;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.measure.NamedMeasure;
import patinary.measure.Quantity;
import patinary.web.Answers;

/** Reads a supply's form; her own measures first, so that a pack may be told in them. */
final class SupplyReading {

    private static final int NAME = 120;
    private static final int OWN_NAME = 60;
    private static final UUID NO_LINE = new UUID(0, 0);

    private final SupplyForm form;
    private final Answers answers;

    SupplyReading(SupplyForm form, Answers answers) {
        this.form = form;
        this.answers = answers;
    }

    /** What was typed; to be used only where {@link Answers#anyWrong()} says no. The line may still have to be made. */
    Optional<Supply.Facts> facts() {
        UUID line = line();
        String name = answers.text("name", form.name, NAME, "supplies.error.name-missing");
        Optional<Dimension> chosen =
                answers.word("dimension", form.dimension, Dimension.class, "supplies.error.dimension-missing");
        return chosen.map(dimension -> {
            Tool tool = tool(dimension);
            List<Supply.Named> measures = named("measures", form.measures, dimension, List.of());
            measures.addAll(tool.use(measures, answers));
            List<Supply.Named> packs = named("packs", form.packs, dimension, known(measures, dimension));
            List<Supply.Named> all = new ArrayList<>(measures);
            all.addAll(packs);
            return new Supply.Facts(
                    line,
                    name,
                    dimension,
                    answers.optionalAmount("retailPrice", form.retailPrice).orElse(null),
                    low(dimension, known(all, dimension)).orElse(null),
                    packs,
                    measures,
                    null,
                    List.of(),
                    Limits.NONE,
                    weighing(),
                    tool.wear());
        });
    }

    /**
     * What is said of its wear.
     *
     * @param size the part of one that a use takes, or null where its price is not spread
     */
    private record Tool(@Nullable Wear wear, @Nullable BigDecimal size) {

        static final Tool NONE = new Tool(null, null);

        List<Supply.Named> use(List<Supply.Named> others, Answers answers) {
            if (size == null) {
                return List.of();
            }
            if (others.stream().anyMatch(other -> other.name().equalsIgnoreCase(ToolUse.MEASURE))) {
                answers.wrong("uses", "supplies.error.use-taken");
            }
            return List.of(new Supply.Named(ToolUse.MEASURE, size));
        }
    }

    private Tool tool(Dimension dimension) {
        if (form.wear.equals(SupplyForm.NO_TOOL)) {
            return Tool.NONE;
        }
        Optional<Wear> wear = answers.word("wear", form.wear, Wear.class, "supplies.error.wear");
        if (wear.isEmpty() || wear.get() == Wear.AT_ONCE) {
            return new Tool(wear.orElse(null), null);
        }
        if (dimension != Dimension.COUNT) {
            answers.wrong("wear", "supplies.error.tool-dimension");
        }
        Optional<Integer> uses = form.uses.isBlank() ? Optional.of(0) : answers.whole("uses", form.uses);
        uses.filter(number -> number < 1 || number > ToolUse.MOST)
                .ifPresent(number -> answers.wrong("uses", "supplies.error.uses"));
        return new Tool(
                Wear.BY_USE,
                uses.filter(number -> number > 0).map(ToolUse::size).orElse(null));
    }

    private Weighing weighing() {
        Optional<BigDecimal> empty = form.emptyGrams.isBlank()
                ? Optional.empty()
                : answers.quantity("emptyGrams", form.emptyGrams, Dimension.MASS, List.of());
        Optional<BigDecimal> perMl = form.gramsPerMl.isBlank()
                ? Optional.empty()
                : answers.decimal("gramsPerMl", form.gramsPerMl, "supplies.error.grams-per-ml");
        return new Weighing(
                empty.filter(grams -> aboveZero("emptyGrams", grams)).orElse(null),
                perMl.filter(grams -> aboveZero("gramsPerMl", grams)).orElse(null));
    }

    private boolean aboveZero(String field, BigDecimal number) {
        if (number.signum() <= 0) {
            answers.wrong(field, "supplies.error.nothing");
        }
        return number.signum() > 0;
    }

    private UUID line() {
        if (!form.newLine.isBlank()) {
            answers.note("newLine", form.newLine, NAME);
            answers.note("newMaker", form.newMaker, NAME);
            return NO_LINE;
        }
        return answers.id("line", form.line, "supplies.error.line-missing");
    }

    private Optional<BigDecimal> low(Dimension dimension, List<NamedMeasure> known) {
        return form.low.isBlank() ? Optional.empty() : answers.quantity("low", form.low, dimension, known);
    }

    private List<Supply.Named> named(
            String field, List<SupplyForm.Line> lines, Dimension dimension, List<NamedMeasure> known) {
        List<Supply.Named> read = new ArrayList<>();
        List<NamedMeasure> sofar = new ArrayList<>(known);
        for (int i = 0; i < lines.size(); i++) {
            SupplyForm.Line line = lines.get(i);
            if (!line.isEmpty()) {
                String at = field + "[" + i + "].";
                answers.quantity(at + "quantity", line.quantity, dimension, sofar)
                        .flatMap(quantity -> named(at, line, Quantity.ofBase(quantity, dimension)))
                        .filter(measure -> isNew(at, measure, read))
                        .ifPresent(measure -> {
                            sofar.add(measure);
                            read.add(new Supply.Named(
                                    measure.name(), measure.quantity().value()));
                        });
            }
        }
        return read;
    }

    private Optional<NamedMeasure> named(String at, SupplyForm.Line line, Quantity quantity) {
        String name = answers.text(at + "name", line.name, OWN_NAME, "supplies.error.own-name-missing");
        if (quantity.value().signum() == 0) {
            answers.wrong(at + "quantity", "supplies.error.nothing");
            return Optional.empty();
        }
        if (name.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new NamedMeasure(name, quantity));
        } catch (IllegalArgumentException alreadyAUnit) {
            answers.wrong(at + "name", "supplies.error.own-name");
            return Optional.empty();
        }
    }

    private boolean isNew(String at, NamedMeasure measure, List<Supply.Named> read) {
        boolean fresh = read.stream().noneMatch(other -> other.name().equalsIgnoreCase(measure.name()));
        if (!fresh) {
            answers.wrong(at + "name", "supplies.error.own-name-twice");
        }
        return fresh;
    }

    private static List<NamedMeasure> known(List<Supply.Named> named, Dimension dimension) {
        return named.stream()
                .map(one -> new NamedMeasure(one.name(), Quantity.ofBase(one.quantity(), dimension)))
                .toList();
    }
}
