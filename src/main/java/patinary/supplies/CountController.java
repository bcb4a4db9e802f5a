package patinary.supplies;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.ledger.StockPlace;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** "There is this much left": the form of a count, and what it settled. */
@Controller
@RequestMapping("/supplies")
class CountController {

    private static final int NOTE = 2000;

    private final SupplyCatalog catalog;
    private final SupplyStory story;
    private final SupplyDocuments documents;
    private final Settled settled;
    private final CurrentShop shop;
    private final Refusal refusal;

    CountController(
            SupplyCatalog catalog,
            SupplyStory story,
            SupplyDocuments documents,
            Settled settled,
            CurrentShop shop,
            Refusal refusal) {
        this.catalog = catalog;
        this.story = story;
        this.documents = documents;
        this.settled = settled;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping("/{supply}/count")
    String form(@PathVariable UUID supply, @RequestParam(defaultValue = "BENCH") StockPlace place, Model model) {
        CountForm form = new CountForm();
        form.date = shop.today().toString();
        form.place = place.name();
        model.addAttribute("form", form);
        return page(model, find(supply));
    }

    @PostMapping("/{supply}/count")
    String count(
            @PathVariable UUID supply,
            @ModelAttribute("form") CountForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        SupplyCatalog.Known known = find(supply);
        Answers answers = new Answers(errors, shop.currency());
        Optional<SupplyCount> count = read(known, form, answers);
        if (!answers.anyWrong()
                && count.isPresent()
                && isDone(() -> documents.record(SupplyCount.class, count.get()), errors)) {
            Notice.next(redirect, "supplies.counted", known.facts().name());
            return "redirect:/supplies/counts/" + count.get().id();
        }
        response.setStatus(422);
        return page(model, known);
    }

    @GetMapping("/counts/{id}")
    String show(@PathVariable UUID id, Model model) {
        SupplyCount count = documents.find(SupplyCount.class, id).orElseThrow(() -> new NotFound("count " + id));
        BigDecimal difference = settled.quantity(id);
        model.addAttribute("count", count);
        model.addAttribute("supply", find(count.supplyId()));
        model.addAttribute("thought", count.quantity().subtract(difference));
        model.addAttribute("difference", difference);
        model.addAttribute("parts", settled.parts(id));
        return "supplies/counted";
    }

    @PostMapping("/counts/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        UUID supply = documents
                .find(SupplyCount.class, id)
                .map(SupplyCount::supplyId)
                .orElseThrow(() -> new NotFound("count " + id));
        try {
            documents.remove(SupplyCount.class, id);
            Notice.next(redirect, "supplies.count.removed");
        } catch (Refused sealed) {
            Notice.next(redirect, "supplies.sealed");
        }
        return "redirect:/supplies/" + supply;
    }

    private Optional<SupplyCount> read(SupplyCatalog.Known supply, CountForm form, Answers answers) {
        UUID id = answers.id("id", form.id, "supplies.error.form-id");
        LocalDate date = answers.date("date", form.date);
        String note = answers.note("note", form.note, NOTE);
        Optional<StockPlace> place =
                answers.word("place", form.place, StockPlace.class, "supplies.error.place-missing");
        // Nothing left is nothing left in any unit.
        Optional<BigDecimal> quantity = form.quantity.equals("0")
                ? Optional.of(BigDecimal.ZERO)
                : answers.quantity(
                        "quantity", form.quantity, supply.facts().dimension(), SupplyMeasures.of(supply.facts()));
        return place.flatMap(at ->
                quantity.map(counted -> new SupplyCount(id, date, note, supply.id(), at, counted).asWaste(form.waste)));
    }

    private boolean isDone(Runnable recording, BindingResult errors) {
        try {
            recording.run();
            return true;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return false;
        }
    }

    private SupplyCatalog.Known find(UUID id) {
        return catalog.find(id).orElseThrow(() -> new NotFound("count " + id));
    }

    private String page(Model model, SupplyCatalog.Known supply) {
        model.addAttribute("supply", supply);
        model.addAttribute("left", story.left(supply.id()));
        model.addAttribute(
                "places",
                List.of(Choice.said("BENCH", "supplies.place.BENCH"), Choice.said("SHELF", "supplies.place.SHELF")));
        return "supplies/count";
    }
}
