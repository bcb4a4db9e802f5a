package patinary.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.measure.Sides;
import patinary.measure.UnreadableQuantity;
import patinary.supplies.Motif;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;

/** Reads what was cut out of sheets: each line is a use by its area, and a cut that the drawing of the sheet shows. */
final class CutReading {

    private static final int TYPED = 60;
    private static final int SCALE = 14;
    private static final int MOST = 1000;

    /** One line: what one cut takes, and its sides where it has some. */
    private record Read(
            SheetCut.Kind kind,
            String words,
            BigDecimal area,
            @Nullable Sides sides) {}

    private final Answers answers;
    private final Map<UUID, SupplyCatalog.Known> supplies;
    private final UseReading shares;
    private final List<SupplyUse> uses = new ArrayList<>();
    private final List<UsePiece> parts = new ArrayList<>();
    private final List<SheetCut> cuts = new ArrayList<>();

    CutReading(Answers answers, Map<UUID, SupplyCatalog.Known> supplies, UseReading shares) {
        this.answers = answers;
        this.supplies = supplies;
        this.shares = shares;
    }

    /** @param before how many uses the entry has already */
    CutReading read(List<HandlingForm.CutLine> lines, int before) {
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                line("handling.cuts[" + i + "].", before + uses.size() + 1, lines.get(i));
            }
        }
        return this;
    }

    List<SupplyUse> uses() {
        return uses;
    }

    List<UsePiece> parts() {
        return parts;
    }

    List<SheetCut> cuts() {
        return cuts;
    }

    private void line(String at, int number, HandlingForm.CutLine line) {
        int bar = line.what.indexOf('|');
        String motif = bar < 0 ? "" : line.what.substring(bar + 1);
        UUID id = answers.id(at + "what", bar < 0 ? line.what : line.what.substring(0, bar), "bench.error.cut-what");
        SupplyCatalog.Known supply = supplies.get(id);
        parts.addAll(shares.parts(at, number, line));
        if (supply == null) {
            if (!line.what.isBlank()) {
                answers.wrong(at + "what", "bench.error.cut-what");
            }
            return;
        }
        int times = times(at, line);
        Optional<Read> read = motif.isEmpty() ? typed(at, line, supply) : motif(at, line, motif, supply.facts());
        read.ifPresent(one -> add(number, id, one, times, !shares.isExact(at, line.how), motif));
    }

    private void add(int number, UUID id, Read read, int times, boolean estimated, String motif) {
        String typed = times == 1 ? read.words() : times + " times " + read.words();
        BigDecimal area = read.area().multiply(BigDecimal.valueOf(times)).setScale(SCALE, RoundingMode.HALF_UP);
        uses.add(new SupplyUse(number, id, typed, area, estimated));
        Sides sides = read.sides();
        cuts.add(new SheetCut(
                number,
                read.kind(),
                motif,
                sides == null ? null : sides.width(),
                sides == null ? null : sides.height(),
                times));
    }

    private int times(String at, HandlingForm.CutLine line) {
        int times = answers.whole(at + "times", line.times).orElse(1);
        if (times < 1 || times > MOST) {
            answers.wrong(at + "times", "bench.error.cut-times");
            return 1;
        }
        return times;
    }

    private Optional<Read> motif(String at, HandlingForm.CutLine line, String name, Supply.Facts facts) {
        if (!line.quantity.isBlank()) {
            answers.wrong(at + "quantity", "bench.error.cut-two");
        }
        Optional<Motif> motif =
                facts.motifs().stream().filter(one -> one.name().equals(name)).findFirst();
        if (motif.isEmpty()) {
            answers.wrong(at + "what", "bench.error.cut-what");
        }
        return motif.map(one -> new Read(SheetCut.Kind.MOTIF, name, one.sides().area(), one.sides()));
    }

    private Optional<Read> typed(String at, HandlingForm.CutLine line, SupplyCatalog.Known supply) {
        Supply.Facts facts = supply.facts();
        String text = answers.text(at + "quantity", line.quantity.strip(), TYPED, "bench.error.cut-size");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<Fraction> part = Fraction.read(text);
        return part.isPresent()
                ? part(at, text, part.get(), facts)
                : bySides(at, text, facts).or(() -> byQuantity(at, text, supply));
    }

    private Optional<Read> part(String at, String text, Fraction part, Supply.Facts facts) {
        if (facts.sheet() == null) {
            answers.wrong(at + "quantity", "bench.error.cut-no-sheet");
            return Optional.empty();
        }
        if (!part.isPart()) {
            answers.wrong(at + "quantity", "bench.error.cut-part");
            return Optional.empty();
        }
        BigDecimal area = part.of(facts.sheet().sides().area());
        return Optional.of(new Read(SheetCut.Kind.PART, text, area, null));
    }

    private Optional<Read> bySides(String at, String text, Supply.Facts facts) {
        try {
            Sides sides = Sides.parse(text);
            if (facts.sheet() != null && !sides.fitsIn(facts.sheet().sides())) {
                answers.wrong(
                        at + "quantity",
                        "bench.error.cut-too-large",
                        facts.sheet().sides().typed());
            }
            return Optional.of(new Read(SheetCut.Kind.SIZE, text, sides.area(), sides));
        } catch (UnreadableQuantity noSides) {
            return Optional.empty();
        }
    }

    /** An area, or a measure of her own: it costs the same, but the drawing does not know its shape. */
    private Optional<Read> byQuantity(String at, String text, SupplyCatalog.Known supply) {
        if (supply.facts().dimension() != Dimension.AREA) {
            answers.wrong(at + "what", "bench.error.cut-what");
            return Optional.empty();
        }
        return shares.quantity(at, text, supply).map(area -> new Read(SheetCut.Kind.PART, text, area, null));
    }
}
