package patinary.bench;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.shelflife.UseFirst;
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.ToolUse;
import patinary.web.Answers;
import patinary.web.Choice;

/** What the form of a bench entry offers to choose from, and how it is read. */
@Component
class BenchFormPage {

    private final SupplyCatalog catalog;
    private final WorkedPieces pieces;
    private final CurrentShop shop;
    private final BenchFinishes finishes;
    private final KeptPots pots;
    private final HandlingPage handling;
    private final UseFirst first;
    private final MishapBook mishaps;

    BenchFormPage(
            SupplyCatalog catalog,
            WorkedPieces pieces,
            CurrentShop shop,
            BenchFinishes finishes,
            KeptPots pots,
            HandlingPage handling,
            UseFirst first,
            MishapBook mishaps) {
        this.first = first;
        this.pots = pots;
        this.handling = handling;
        this.catalog = catalog;
        this.pieces = pieces;
        this.shop = shop;
        this.finishes = finishes;
        this.mishaps = mishaps;
    }

    /** What was typed; to be used only where {@code answers} found nothing wrong. */
    BenchContent read(BenchForm form, Answers answers) {
        List<WorkedPiece> chosen = chosen(form);
        if (chosen.size() < form.pieces.size()) {
            answers.wrong("pieces", "bench.error.piece");
        }
        BenchReading.Known known =
                new BenchReading.Known(catalog.all(), finishes::isThere, pots.useBys(), reworks(form, chosen));
        return new BenchReading(form, answers, shop.today(), known, chosen).content();
    }

    /**
     * Everything that the long form shows.
     *
     * @param all what {@link #supplies} gave
     * @param chosen what {@link #chosen} gave
     */
    void fill(
            Model model,
            BenchForm form,
            List<SupplyCatalog.Known> all,
            BenchFinishes.Offer offer,
            List<WorkedPiece> chosen) {
        List<SupplyCatalog.Known> supplies = handling.usable(all, form);
        handling.fill(model, form, supplies);
        work(model, form, supplies, offer, chosen);
        List<UUID> ids = chosen.stream().map(WorkedPiece::id).toList();
        model.addAttribute("offered", pieces.offered(form.pieceWords, ids));
        model.addAttribute(
                "supplies", supplies.stream().map(SupplyCatalog.Known::choice).toList());
        model.addAttribute(
                "tools",
                supplies.stream()
                        .filter(BenchFormPage::isTool)
                        .map(SupplyCatalog.Known::choice)
                        .toList());
        model.addAttribute("useFirst", first.all().values());
        warnings(model, form, chosen);
    }

    /** What the bench page shows of an entry as the long form does: the chosen pieces, the finish, and what to take care of. */
    void work(
            Model model,
            BenchForm form,
            List<SupplyCatalog.Known> supplies,
            BenchFinishes.Offer offer,
            List<WorkedPiece> chosen) {
        form.fitParts(chosen.stream().map(WorkedPiece::id).toList());
        model.addAttribute("form", form);
        model.addAttribute("chosen", chosen);
        model.addAttribute(
                "chosenPieces",
                chosen.stream()
                        .map(piece -> Choice.named(piece.id().toString(), piece.name()))
                        .toList());
        answers(model);
        finishes.show(model, offer, chosen);
        model.addAttribute("cautions", finishes.cautions(offer.chosen(), CautionTexts.of(form, chosen, supplies)));
    }

    /** Every supply, to be read once for a page. */
    List<SupplyCatalog.Known> supplies() {
        return catalog.all();
    }

    /** The finishes to choose from and the chosen one, to be read once for a page. */
    BenchFinishes.Offer finishes(BenchForm form) {
        return finishes.offer(form.finish);
    }

    /** The tools whose price is spread over their uses. */
    static List<UUID> tools(List<SupplyCatalog.Known> supplies) {
        return supplies.stream()
                .filter(BenchFormPage::isTool)
                .map(SupplyCatalog.Known::id)
                .toList();
    }

    private static boolean isTool(SupplyCatalog.Known supply) {
        return ToolUse.size(supply.facts()).isPresent();
    }

    /** Takes the supplies of the chosen finish for the chosen pieces into the form. */
    void fillIn(BenchForm form, List<SupplyCatalog.Known> supplies, List<WorkedPiece> chosen) {
        finishes.find(form.finish).ifPresent(kept -> new FinishFilling(kept.finish(), supplies, chosen).into(form));
    }

    /** The finish that all the chosen pieces wait for. */
    void plan(BenchForm form, List<WorkedPiece> chosen) {
        List<@Nullable UUID> planned =
                chosen.stream().map(WorkedPiece::finishId).distinct().collect(Collectors.toList());
        if (form.finish.isEmpty() && planned.size() == 1 && planned.get(0) != null) {
            form.finish = planned.get(0).toString();
        }
    }

    /** What failed before with the same supplies on the same surfaces, and the words to tell a new mishap with. */
    private void warnings(Model model, BenchForm form, List<WorkedPiece> chosen) {
        List<UUID> used =
                ChosenIds.read(form.uses.stream().map(use -> use.supply).toList());
        model.addAttribute(
                "failedBefore",
                mishaps.again(used, chosen.stream().map(WorkedPiece::material).toList()));
        model.addAttribute("knownSurfaces", mishaps.surfaces());
        model.addAttribute(
                "reworks",
                mishaps.worksOn(chosen.stream().map(WorkedPiece::id).toList(), form.id).stream()
                        .map(work -> Choice.named(work.id().toString(), work.name()))
                        .toList());
    }

    private List<UUID> reworks(BenchForm form, List<WorkedPiece> chosen) {
        return mishaps.worksOn(chosen.stream().map(WorkedPiece::id).toList(), form.id).stream()
                .map(MishapBook.Work::id)
                .toList();
    }

    /** The answers that are the same in every shop. */
    void answers(Model model) {
        model.addAttribute("days", said("bench.day.", DayChoice.values()));
        model.addAttribute("shares", said("bench.share.", ShareMode.values()));
        model.addAttribute(
                "hows", List.of(Choice.said("EYE", "bench.how.EYE"), Choice.said("EXACT", "bench.how.EXACT")));
    }

    /** The pieces, to be read once for a page. One that is marked ready was worked on, whether its own box was ticked or not. */
    List<WorkedPiece> chosen(BenchForm form) {
        LinkedHashSet<String> all = new LinkedHashSet<>(form.pieces);
        all.addAll(form.ready);
        // A list that was numbered by hand may have gaps.
        all.removeIf(Objects::isNull);
        form.pieces = List.copyOf(all);
        return pieces.withIds(ChosenIds.read(all));
    }

    private static List<Choice> said(String prefix, Enum<?>[] words) {
        return Arrays.stream(words)
                .map(word -> Choice.said(word.name(), prefix + word.name()))
                .toList();
    }
}
