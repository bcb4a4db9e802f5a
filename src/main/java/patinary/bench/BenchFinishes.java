package patinary.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.bench.NowRows.FinishRow;
import patinary.bench.NowRows.FinishStep;
import patinary.finishes.Finish;
import patinary.finishes.FinishBook;
import patinary.web.Choice;
import patinary.web.Ids;

/** The finishes as the bench offers and follows them. */
@Component
class BenchFinishes {

    /** Those that are offered, and the one that is followed. */
    record Offer(List<FinishBook.Kept> all, Optional<FinishBook.Kept> chosen) {}

    private final FinishBook book;
    private final Cautions cautions;

    BenchFinishes(FinishBook book, Cautions cautions) {
        this.book = book;
        this.cautions = cautions;
    }

    Optional<FinishBook.Kept> find(String typed) {
        return Ids.read(typed).flatMap(book::find);
    }

    boolean isThere(UUID id) {
        return book.find(id).isPresent();
    }

    /** The step of a finish, by its line. */
    Optional<Finish.Step> step(String finish, String line) {
        return find(finish).stream()
                .flatMap(kept -> kept.finish().steps().stream())
                .filter(step -> Integer.toString(step.line()).equals(line))
                .findFirst();
    }

    /** What to choose from, and the chosen one. An entry may follow a finish that was removed since. */
    Offer offer(String chosen) {
        Optional<UUID> id = Ids.read(chosen);
        List<FinishBook.Kept> all = id.map(book::allWith).orElseGet(book::all);
        return new Offer(
                all.stream().filter(one -> !one.removed()).toList(),
                all.stream()
                        .filter(one -> id.filter(one.id()::equals).isPresent())
                        .findFirst());
    }

    /** Shows what to choose from, and the steps of the chosen one. */
    void show(Model model, Offer offer, List<WorkedPiece> pieces) {
        Optional<FinishBook.Kept> kept = offer.chosen();
        Stream<FinishBook.Kept> old = kept.stream().filter(FinishBook.Kept::removed);
        model.addAttribute(
                "finishes",
                Stream.concat(old, offer.all().stream())
                        .map(one ->
                                Choice.named(one.id().toString(), one.finish().name()))
                        .toList());
        model.addAttribute("followed", kept.map(FinishBook.Kept::finish).orElse(null));
        model.addAttribute(
                "followedSteps",
                kept.stream()
                        .flatMap(one -> one.finish().steps().stream())
                        .map(FinishStep::of)
                        .toList());
        model.addAttribute(
                "plannedMinutes",
                kept.map(one -> one.finish().minutes() * Math.max(1, pieces.size()))
                        .orElse(0));
        model.addAttribute(
                "withoutArea",
                kept.filter(one -> one.finish().needs().stream()
                                .anyMatch(need -> need.coverage().goesByArea()))
                        .map(one -> pieces.stream()
                                .filter(piece -> piece.area() == null)
                                .map(WorkedPiece::code)
                                .toList())
                        .orElse(List.of()));
    }

    /** The cautions of the steps and those that words call up, the most serious first. */
    List<Caution> cautions(Optional<FinishBook.Kept> finish, List<String> words) {
        List<String> steps = finish.map(kept -> kept.finish().words()).orElse(List.of());
        List<String> named = finish.map(kept -> kept.finish().cautions()).orElse(List.of());
        Stream<Caution> called =
                cautions.about(Stream.concat(words.stream(), steps.stream()).toList()).stream();
        Stream<Caution> of = cautions.all().stream().filter(caution -> named.contains(caution.id()));
        return Stream.concat(of, called)
                .distinct()
                .sorted(Comparator.comparing(Caution::severity))
                .toList();
    }

    /** The finishes as a phone keeps them. */
    List<FinishRow> rows() {
        return rows(book.all());
    }

    List<FinishRow> rows(List<FinishBook.Kept> all) {
        return all.stream()
                .map(kept -> FinishRow.of(
                        kept.id(),
                        kept.finish(),
                        cautions(Optional.of(kept), List.of()).stream()
                                .map(Caution::id)
                                .toList()))
                .toList();
    }
}
