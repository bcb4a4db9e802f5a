package patinary.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;

/** Reads a bench entry's form. What it gives back is to be used only where {@link Answers#anyWrong()} says no. */
final class BenchReading {

    private static final int DONE = 4000;
    private static final int NOTE = 2000;
    private static final int SURFACE = 60;
    private static final int WHAT = 500;
    private static final int PREPARATION = 200;

    private final BenchForm form;
    private final Answers answers;
    private final LocalDate today;
    private final Map<UUID, SupplyCatalog.Known> supplies;
    private final List<WorkedPiece> pieces;
    private final Predicate<UUID> finishes;
    private final Map<UUID, LocalDate> useBys;
    private final Collection<UUID> reworks;

    /**
     * What the answers may speak of.
     *
     * @param finishes whether there is such a finish
     * @param useBys the kept pots with the day by which they are to be used
     * @param reworks the entries in which a mishap of this one may have been done again
     */
    record Known(
            List<SupplyCatalog.Known> supplies,
            Predicate<UUID> finishes,
            Map<UUID, LocalDate> useBys,
            Collection<UUID> reworks) {}

    /**
     * @param pieces the pieces that were chosen, as far as there are such
     */
    BenchReading(BenchForm form, Answers answers, LocalDate today, Known known, List<WorkedPiece> pieces) {
        this.form = form;
        this.answers = answers;
        this.today = today;
        this.supplies =
                known.supplies().stream().collect(Collectors.toMap(SupplyCatalog.Known::id, Function.identity()));
        this.pieces = pieces;
        this.finishes = known.finishes();
        this.useBys = known.useBys();
        this.reworks = known.reworks();
    }

    BenchContent content() {
        LocalDate date = date();
        int minutes = answers.whole("minutes", form.minutes).orElse(0);
        String done = answers.note("done", form.done, DONE);
        String note = answers.note("note", form.note, NOTE);
        UseReading uses = new UseReading(form.uses, answers, supplies, pieces, date)
                .read()
                .ticked(form.tools);
        CutReading cuts = new CutReading(answers, supplies, uses)
                .read(form.handling.cuts, uses.uses().size());
        PotReading pots = new PotReading(answers, supplies, useBys, uses, date)
                .read(form.handling.pots, uses.uses().size() + cuts.uses().size());
        List<SupplyUse> used = together(uses.uses(), cuts.uses(), pots.uses());
        List<Mishap> mishaps = mishaps();
        if (pieces.isEmpty() && minutes == 0 && done.isBlank() && used.isEmpty() && mishaps.isEmpty()) {
            answers.wrong("", "bench.error.empty");
        }
        List<BenchPiece> worked = pieces.stream()
                .map(piece -> new BenchPiece(
                        piece.id(), form.ready.contains(piece.id().toString())))
                .toList();
        List<UsePiece> parts = together(uses.parts(), cuts.parts(), pots.parts());
        return new BenchContent(
                date, note, minutes, done, worked, used, parts, mishaps, pots.handling(cuts.cuts()), finish());
    }

    private static <T> List<T> together(List<T> first, List<T> second, List<T> third) {
        return Stream.of(first, second, third).flatMap(List::stream).toList();
    }

    private @Nullable UUID finish() {
        Optional<UUID> finish = answers.optionalId("finish", form.finish, "bench.error.finish");
        if (finish.filter(id -> !finishes.test(id)).isPresent()) {
            answers.wrong("finish", "bench.error.finish");
        }
        return finish.orElse(null);
    }

    private LocalDate date() {
        Optional<DayChoice> day = answers.word("day", form.day, DayChoice.class, "bench.error.day");
        if (day.isPresent() && day.get() == DayChoice.OTHER) {
            return answers.date("date", form.date);
        }
        LocalDate chosen = day.isPresent() && day.get() == DayChoice.YESTERDAY ? today.minusDays(1) : today;
        // A day that was typed beside another choice is never passed over in silence.
        if (answers.optionalDate("date", form.date)
                .filter(typed -> !typed.equals(chosen))
                .isPresent()) {
            answers.wrong("date", "bench.error.two-days");
        }
        return chosen;
    }

    private List<Mishap> mishaps() {
        List<Mishap> read = new ArrayList<>();
        for (int i = 0; i < form.mishaps.size(); i++) {
            BenchForm.MishapLine line = form.mishaps.get(i);
            if (!line.isEmpty()) {
                read.add(mishap("mishaps[" + i + "].", read.size() + 1, line));
            }
        }
        return read;
    }

    private Mishap mishap(String at, int number, BenchForm.MishapLine line) {
        Optional<UUID> piece = answers.optionalId(at + "piece", line.piece, "bench.error.piece");
        if (piece.isPresent() && pieces.stream().noneMatch(one -> one.id().equals(piece.get()))) {
            answers.wrong(at + "piece", "bench.error.mishap-piece");
        }
        Optional<UUID> supply = answers.optionalId(at + "supply", line.supply, "bench.error.supply");
        if (supply.isPresent() && !supplies.containsKey(supply.get())) {
            answers.wrong(at + "supply", "bench.error.supply");
        }
        Optional<UUID> rework = answers.optionalId(at + "reworkedIn", line.reworkedIn, "bench.error.rework");
        if (rework.isPresent() && !reworks.contains(rework.get())) {
            answers.wrong(at + "reworkedIn", "bench.error.rework");
        }
        return new Mishap(
                number,
                piece.orElse(null),
                supply.orElse(null),
                answers.note(at + "surface", line.surface, SURFACE),
                answers.text(at + "what", line.what, WHAT, "bench.error.what"),
                answers.note(at + "preparation", line.preparation, PREPARATION),
                rework.orElse(null));
    }
}
