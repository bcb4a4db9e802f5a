package patinary.bench;

import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.bench.NowRows.PieceRow;
import patinary.bench.NowRows.StyleRow;
import patinary.bench.NowRows.SupplyRow;
import patinary.bench.NowRows.WordsRow;
import patinary.supplies.SupplyCatalog;

/** Fills the bench page: with what the shop has, or, before the sign-in, with nothing. */
@Component
class NowPage {

    /** More than fit under a thumb are found by their words. */
    private static final int PIECES = 18;

    /** The others are behind one more choice. */
    private static final int SUPPLIES = 8;

    /** Tools are ticked and no more, so they take little room. */
    private static final int TOOLS = 8;

    private final BenchFormPage page;
    private final NowChoices choices;
    private final NowPast past;
    private final NowClock clock;
    private final BenchFinishes finishes;
    private final Clock time;
    private final MishapBook mishaps;

    NowPage(
            BenchFormPage page,
            NowChoices choices,
            NowPast past,
            NowClock clock,
            BenchFinishes finishes,
            Clock time,
            MishapBook mishaps) {
        this.page = page;
        this.choices = choices;
        this.past = past;
        this.clock = clock;
        this.finishes = finishes;
        this.time = time;
        this.mishaps = mishaps;
    }

    /** The page as a phone keeps it: the same page, to be filled from the phone's own lists. */
    void shell(Model model) {
        NowForm form = new NowForm();
        form.mishaps.add(new BenchForm.MishapLine());
        openLine(form);
        page.answers(model);
        Stream.of(
                        "nowPieces",
                        "nowSupplies",
                        "nowStyles",
                        "phrases",
                        "surfaces",
                        "mishapWords",
                        "couldFail",
                        "nowCautions",
                        "finishes",
                        "withoutArea",
                        "followedSteps",
                        "chosenPieces",
                        "nowTools",
                        "chosen")
                .forEach(list -> model.addAttribute(list, List.of()));
        model.addAttribute("useRows", new LinkedHashMap<String, SupplyRow>());
        model.addAttribute("calledUp", Set.of());
        model.addAttribute("calledNotes", 0);
        model.addAttribute("followed", null);
        model.addAttribute("plannedMinutes", 0);
        model.addAttribute("person", "");
        model.addAttribute("clock", NowClock.View.off());
        model.addAttribute("waits", List.of());
        model.addAttribute("filled", false);
        model.addAttribute("form", form);
    }

    /**
     * The page for somebody who is signed in.
     *
     * @param worked what {@link BenchFormPage#chosen} gave
     * @param state the person's clock
     */
    void fill(Model model, NowForm form, List<WorkedPiece> worked, String person, BenchClock.State state) {
        List<SupplyCatalog.Known> known = page.supplies();
        BenchFinishes.Offer offer = page.finishes(form);
        page.work(model, form, known, offer, worked);
        List<UUID> chosen = ChosenIds.read(form.pieces);
        List<PieceRow> pieces = choices.pieces(form.pieceWords, chosen, PIECES);
        NowPast.Past earlier = past.read();
        List<StyleRow> styles = earlier.styles();
        Set<String> own = pieces.stream()
                .filter(piece -> chosen.contains(piece.value()))
                .map(PieceRow::style)
                .collect(Collectors.toSet());
        NowPast.Entries before = earlier.entries();
        List<SupplyRow> supplies = NowChoices.inOrderOf(
                choices.supplies(known, before.lastUsed()),
                styles.stream()
                        .filter(style -> own.contains(style.value().toString()))
                        .flatMap(style -> style.order().stream()));
        lines(form, supplies);
        List<WordsRow> phrases = choices.phrases(before.phrases());
        model.addAttribute("nowPieces", pieces);
        model.addAttribute("nowSupplies", supplies);
        model.addAttribute("nowTools", tools(supplies, form));
        model.addAttribute("useRows", byId(supplies));
        model.addAttribute("nowStyles", styles);
        model.addAttribute("ownStyles", own);
        model.addAttribute("phrases", phrases);
        model.addAttribute("surfaces", before.surfaces());
        model.addAttribute("mishapWords", before.mishaps());
        model.addAttribute(
                "couldFail",
                mishaps.couldFailAgain(
                        known, pieces.stream().map(PieceRow::value).toList()));
        cautions(model, pieces, supplies, phrases, finishes.rows(offer.all()));
        Instant now = time.instant();
        model.addAttribute("clock", clock.view(state, now));
        model.addAttribute("waits", clock.waits(person, now));
        model.addAttribute("person", person);
        model.addAttribute("filled", true);
    }

    /** Every caution that a tap may call up is on the page; those that are called up already are shown. */
    @SuppressWarnings("unchecked")
    private void cautions(
            Model model,
            List<PieceRow> pieces,
            List<SupplyRow> supplies,
            List<WordsRow> phrases,
            List<NowRows.FinishRow> followed) {
        List<Caution> called = (List<Caution>) model.getAttribute("cautions");
        Set<String> ids = new LinkedHashSet<>();
        pieces.forEach(piece -> ids.addAll(piece.cautions()));
        supplies.forEach(supply -> ids.addAll(supply.cautions()));
        phrases.forEach(phrase -> ids.addAll(phrase.cautions()));
        followed.forEach(finish -> ids.addAll(finish.cautions()));
        Set<String> on = called == null
                ? Set.of()
                : called.stream().map(Caution::id).collect(Collectors.toCollection(LinkedHashSet::new));
        ids.addAll(on);
        model.addAttribute("nowCautions", choices.cautions(ids));
        model.addAttribute(
                "calledNotes",
                choices.cautions(on).stream().filter(row -> !row.isSerious()).count());
        model.addAttribute("calledUp", on);
    }

    /** One line for each supply that is offered as a chip, one mishap, and a line for any other supply. */
    private static void lines(NowForm form, List<SupplyRow> supplies) {
        if (form.uses.isEmpty()) {
            supplies.stream().filter(row -> !row.wears()).limit(SUPPLIES).forEach(supply -> {
                BenchForm.UseLine line = new BenchForm.UseLine();
                line.supply = supply.value().toString();
                form.uses.add(line);
            });
        }
        if (form.mishaps.isEmpty()) {
            form.mishaps.add(new BenchForm.MishapLine());
        }
        openLine(form);
    }

    /** The tools that were used last, and those that are ticked. */
    private static List<SupplyRow> tools(List<SupplyRow> supplies, NowForm form) {
        List<SupplyRow> tools = supplies.stream().filter(SupplyRow::wears).toList();
        return IntStream.range(0, tools.size())
                .filter(at ->
                        at < TOOLS || form.tools.contains(tools.get(at).value().toString()))
                .mapToObj(tools::get)
                .toList();
    }

    /** The last line is always one whose supply is still to be chosen. */
    private static void openLine(NowForm form) {
        int last = form.uses.size() - 1;
        if (last < 0 || !form.uses.get(last).supply.isBlank()) {
            form.uses.add(new BenchForm.UseLine());
            last++;
        }
        form.tap(last).picked = true;
    }

    private static Map<String, @Nullable SupplyRow> byId(List<SupplyRow> supplies) {
        return supplies.stream().collect(Collectors.toMap(row -> row.value().toString(), Function.identity()));
    }
}
