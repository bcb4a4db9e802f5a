package patinary.counting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.supplies.MeasureChanges;
import patinary.supplies.SupplyCatalog;
import patinary.web.NotFound;
import patinary.web.Notice;

/** How far her eye is off for one supply, and the correction of a measure of it. */
@Controller
@RequestMapping("/supplies/{id}/eye")
class EyeController {

    private final SupplyCatalog catalog;
    private final CountFacts facts;
    private final MeasureChanges changes;
    private final CurrentShop shop;

    EyeController(SupplyCatalog catalog, CountFacts facts, MeasureChanges changes, CurrentShop shop) {
        this.catalog = catalog;
        this.facts = facts;
        this.changes = changes;
        this.shop = shop;
    }

    /** A span for reading; ratio is null where it tells nothing. */
    record SpanView(
            Span span,
            BigDecimal noted,
            BigDecimal used,
            @Nullable BigDecimal ratio) {

        static SpanView of(Span span) {
            return new SpanView(
                    span,
                    BigDecimal.valueOf(span.noted()),
                    BigDecimal.valueOf(span.used()),
                    span.tells() ? two(span.used() / span.noted()) : null);
        }
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        SupplyCatalog.Known supply = find(id);
        Eye eye = eye(supply);
        model.addAttribute("supply", supply);
        model.addAttribute("facts", supply.facts());
        model.addAttribute("eye", eye);
        model.addAttribute("measures", views(supply, eye));
        model.addAttribute("spans", eye.spans().stream().map(SpanView::of).toList());
        model.addAttribute("changes", supply.changes());
        if (eye.supply() != null && eye.chance() != null && eye.plain() != null) {
            model.addAttribute("plain", two(eye.plain()));
            model.addAttribute("low", two(eye.supply().low()));
            model.addAttribute("high", two(eye.supply().high()));
            model.addAttribute("chance", percent(eye.chance().ratio()));
            model.addAttribute("chanceLow", percent(eye.chance().low()));
            model.addAttribute("chanceHigh", percent(eye.chance().high()));
        }
        return "counting/eye";
    }

    /** The size is reckoned anew, so that nothing that a page says can become a measure. */
    @PostMapping
    String correct(@PathVariable UUID id, @RequestParam String name, RedirectAttributes redirect) {
        SupplyCatalog.Known supply = find(id);
        Optional<BigDecimal> really = views(supply, eye(supply)).stream()
                .filter(view -> view.name().equals(name) && view.canBeCorrected())
                .map(MeasureView::really)
                .findFirst();
        boolean done = really.isPresent() && changes.correct(id, name, really.get(), shop.today());
        if (done) {
            Notice.next(redirect, "counting.eye.corrected", name);
        } else {
            Notice.next(redirect, "counting.eye.not-corrected");
        }
        return "redirect:/supplies/" + id + "/eye";
    }

    @PostMapping("/undo")
    String undo(
            @PathVariable UUID id,
            @RequestParam String name,
            @RequestParam @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate from,
            RedirectAttributes redirect) {
        find(id);
        Notice.next(redirect, changes.undo(id, name, from) ? "counting.eye.undone" : "counting.eye.not-undone");
        return "redirect:/supplies/" + id + "/eye";
    }

    private Eye eye(SupplyCatalog.Known supply) {
        CountFacts.Facts known = facts.of(supply.id());
        return Eye.of(Spans.of(supply, known.counts(), known.taken()));
    }

    private static List<MeasureView> views(SupplyCatalog.Known supply, Eye eye) {
        return eye.measures().stream()
                .map(judged -> MeasureView.of(supply, judged))
                .toList();
    }

    private SupplyCatalog.Known find(UUID id) {
        return catalog.find(id).orElseThrow(() -> new NotFound("supply " + id));
    }

    private static BigDecimal two(double number) {
        return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP);
    }

    private static BigDecimal percent(double share) {
        return BigDecimal.valueOf(100 * share).setScale(0, RoundingMode.HALF_UP);
    }
}
