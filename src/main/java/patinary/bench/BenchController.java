package patinary.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.finishes.FinishBook;
import patinary.ledger.Refused;
import patinary.supplies.SupplyCatalog;
import patinary.web.Choice;
import patinary.web.Dates;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** The list of bench entries, and the page of one. */
@Controller
@RequestMapping("/bench")
class BenchController {

    private final BenchList list;
    private final BenchEntries entries;
    private final BenchCosts costs;
    private final WorkedPieces pieces;
    private final SupplyCatalog catalog;
    private final BenchFinishes finishes;
    private final KeptPots pots;
    private final HandlingPage handling;

    BenchController(
            BenchList list,
            BenchEntries entries,
            BenchCosts costs,
            WorkedPieces pieces,
            SupplyCatalog catalog,
            BenchFinishes finishes,
            KeptPots pots,
            HandlingPage handling) {
        this.pots = pots;
        this.handling = handling;
        this.list = list;
        this.entries = entries;
        this.costs = costs;
        this.pieces = pieces;
        this.catalog = catalog;
        this.finishes = finishes;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(required = false) @Nullable UUID piece,
            @RequestParam(required = false) @Nullable UUID supply,
            @RequestParam(defaultValue = "") String mishap,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        boolean mishapsOnly = mishap.equals("yes");
        LocalDate first = Dates.read(from).orElse(null);
        LocalDate last = Dates.read(to).orElse(null);
        BenchList.Filter filter = new BenchList.Filter(q, piece, supply, mishapsOnly, first, last);
        BenchList.Found found = list.find(filter, Window.of(page));
        model.addAttribute("rows", found.rows());
        model.addAttribute("minutes", found.minutes());
        model.addAttribute("labels", list.labels(found.rows().rows()));
        model.addAttribute("from", first);
        model.addAttribute("to", last);
        model.addAttribute("q", q);
        model.addAttribute("piece", piece == null ? "" : piece.toString());
        model.addAttribute("supply", supply == null ? "" : supply.toString());
        model.addAttribute("mishap", mishap);
        model.addAttribute("pieces", list.pieceChoices(piece));
        model.addAttribute("supplies", catalog.choices());
        model.addAttribute("mishaps", List.of(Choice.said("yes", "bench.mishaps.only")));
        model.addAttribute("filtered", filter.isAnything());
        return "bench/list";
    }

    @GetMapping("/{id}")
    String show(@PathVariable UUID id, Model model) {
        BenchEntries.Stored entry = entries.find(id).orElseThrow(() -> new NotFound("bench entry " + id));
        BenchContent content = entry.content();
        List<SupplyCatalog.Known> supplies = catalog.all();
        List<WorkedPiece> worked = pieces.withIds(
                content.pieces().stream().map(BenchPiece::pieceId).toList());
        model.addAttribute("entry", entry);
        model.addAttribute("work", content);
        model.addAttribute("pieces", worked);
        model.addAttribute(
                "ready",
                content.pieces().stream()
                        .filter(BenchPiece::ready)
                        .map(BenchPiece::pieceId)
                        .toList());
        model.addAttribute("used", costs.used(id));
        model.addAttribute(
                "shares", costs.shares(id).stream().collect(Collectors.groupingBy(BenchCosts.Share::supplyId)));
        model.addAttribute("supplyNames", names(supplies));
        model.addAttribute("pieceNames", worked.stream().collect(Collectors.toMap(WorkedPiece::id, WorkedPiece::name)));
        String finish = content.finishId() == null ? "" : content.finishId().toString();
        Optional<FinishBook.Kept> followed = finishes.find(finish);
        model.addAttribute("finish", followed.orElse(null));
        model.addAttribute("cautions", finishes.cautions(followed, CautionTexts.of(content, worked, supplies)));
        handling.show(model, id, content, supplies);
        return "bench/show";
    }

    @GetMapping("/{id}/remove")
    String sure(@PathVariable UUID id, Model model) {
        model.addAttribute("entry", entries.find(id).orElseThrow(() -> new NotFound("bench entry " + id)));
        return "bench/remove";
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        List<String> missed = pots.used(id, List.of());
        if (!missed.isEmpty()) {
            Notice.next(redirect, "bench.error.pot-used", String.join(", ", missed));
            return "redirect:/bench/" + id;
        }
        try {
            entries.remove(id);
            Notice.next(redirect, "bench.removed");
            return "redirect:/bench";
        } catch (Refused refused) {
            Notice.next(redirect, "bench.not-removed");
            return "redirect:/bench/" + id;
        }
    }

    private static Map<UUID, String> names(List<SupplyCatalog.Known> supplies) {
        return supplies.stream().collect(Collectors.toMap(SupplyCatalog.Known::id, SupplyCatalog.Known::title));
    }
}
