package patinary.supplies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.measure.NamedMeasure;
import patinary.measure.Quantity;
import patinary.measure.Sides;
import patinary.measure.UnreadableQuantity;
import patinary.money.Percent;
import patinary.web.Answers;

/** Reads what a supply's form says of its sheets, and of what its label says. */
final class SheetReading {

    private static final int OWN_NAME = 60;
    private static final int NOTE = 200;
    private static final int MOST_DAYS = 3650;

    private final SupplyForm form;
    private final Answers answers;

    SheetReading(SupplyForm form, Answers answers) {
        this.form = form;
        this.answers = answers;
    }

    /** The facts with what is said of sheets and limits. */
    Supply.Facts complete(Supply.Facts facts) {
        SheetSize sheet = sheet(facts.dimension());
        return facts.with(sheet, motifs(facts, sheet), limits());
    }

    private @Nullable SheetSize sheet(Dimension dimension) {
        if (form.sheet.isBlank()) {
            return null;
        }
        if (dimension != Dimension.AREA) {
            answers.wrong("sheet", "supplies.error.sheet-dimension");
            return null;
        }
        return sides("sheet", form.sheet)
                .map(sides -> new SheetSize(sides.width(), sides.height()))
                .orElse(null);
    }

    private List<Motif> motifs(Supply.Facts facts, @Nullable SheetSize sheet) {
        List<String> taken = new ArrayList<>(Stream.concat(facts.measures().stream(), facts.packs().stream())
                .map(Supply.Named::name)
                .toList());
        List<Motif> read = new ArrayList<>();
        for (int i = 0; i < form.motifs.size(); i++) {
            SupplyForm.Line line = form.motifs.get(i);
            if (!line.isEmpty()) {
                motif("motifs[" + i + "].", line, sheet)
                        .filter(motif -> !isTaken(taken, motif))
                        .ifPresentOrElse(
                                motif -> {
                                    taken.add(motif.name());
                                    read.add(motif);
                                },
                                nameTaken("motifs[" + i + "].name"));
            }
        }
        return read;
    }

    private Runnable nameTaken(String field) {
        return () -> {
            if (!answers.anyWrong()) {
                answers.wrong(field, "supplies.error.own-name-twice");
            }
        };
    }

    private static boolean isTaken(List<String> taken, Motif motif) {
        return taken.stream().anyMatch(motif.name()::equalsIgnoreCase);
    }

    private Optional<Motif> motif(String at, SupplyForm.Line line, @Nullable SheetSize sheet) {
        String name = answers.text(at + "name", line.name, OWN_NAME, "supplies.error.own-name-missing");
        Optional<Sides> sides = sides(at + "quantity", line.quantity);
        if (sheet == null) {
            answers.wrong("sheet", "supplies.error.sheet-missing");
            return Optional.empty();
        }
        if (sides.isPresent() && !sides.get().fitsIn(sheet.sides())) {
            answers.wrong(at + "quantity", "supplies.error.motif-too-large");
            return Optional.empty();
        }
        return sides.filter(size -> isName(at + "name", name, size))
                .map(size -> new Motif(name, size.width(), size.height()));
    }

    /** A motif is a measure too, so it may not be called like a unit. */
    private boolean isName(String field, String name, Sides sides) {
        try {
            return !name.isBlank()
                    && new NamedMeasure(name, Quantity.ofBase(sides.area(), Dimension.AREA))
                            .name()
                            .equals(name);
        } catch (IllegalArgumentException alreadyAUnit) {
            answers.wrong(field, "supplies.error.own-name");
            return false;
        }
    }

    private Optional<Sides> sides(String field, String text) {
        try {
            return Optional.of(Sides.parse(text));
        } catch (UnreadableQuantity unreadable) {
            answers.wrong(field, "supplies.error.sides");
            return Optional.empty();
        }
    }

    private Limits limits() {
        Integer opened = days("daysOpened", form.daysOpened);
        Integer mixed = days("daysMixed", form.daysMixed);
        Percent most =
                form.most.isBlank() ? null : answers.percent("most", form.most).orElse(null);
        if (most != null && most.value().signum() == 0) {
            answers.wrong("most", "supplies.error.nothing");
        }
        return new Limits(opened, mixed, most, answers.note("mostNote", form.mostNote, NOTE));
    }

    private @Nullable Integer days(String field, String text) {
        Optional<Integer> days = answers.whole(field, text);
        if (days.isPresent() && (days.get() == 0 || days.get() > MOST_DAYS)) {
            answers.wrong(field, "supplies.error.days");
        }
        return days.orElse(null);
    }
}
