package patinary.supplies;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
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
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Takes from the retail shelf for her own bench, at cost. */
@Controller
@RequestMapping("/supplies")
class TakingController {

    private static final int NOTE = 2000;

    private final SupplyCatalog catalog;
    private final SupplyStory story;
    private final SupplyDocuments documents;
    private final Settled settled;
    private final TakingList list;
    private final CurrentShop shop;
    private final Refusal refusal;

    TakingController(
            SupplyCatalog catalog,
            SupplyStory story,
            SupplyDocuments documents,
            Settled settled,
            TakingList list,
            CurrentShop shop,
            Refusal refusal) {
        this.list = list;
        this.catalog = catalog;
        this.story = story;
        this.documents = documents;
        this.settled = settled;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping("/{supply}/take")
    String form(@PathVariable UUID supply, Model model) {
        CountForm form = new CountForm();
        form.date = shop.today().toString();
        model.addAttribute("form", form);
        return page(model, find(supply));
    }

    @PostMapping("/{supply}/take")
    String take(
            @PathVariable UUID supply,
            @ModelAttribute("form") CountForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        SupplyCatalog.Known known = find(supply);
        Answers answers = new Answers(errors, shop.currency());
        Optional<Taking> taking = read(known, form, answers);
        if (!answers.anyWrong()
                && taking.isPresent()
                && isDone(() -> documents.record(Taking.class, taking.get()), errors)) {
            Notice.next(redirect, "supplies.taken", known.facts().name());
            return "redirect:/supplies/takings/" + taking.get().id();
        }
        response.setStatus(422);
        return page(model, known);
    }

    /** A year's takings with their sum, to be handed over. A year that nobody means is this year. */
    @GetMapping("/takings")
    String year(@RequestParam(defaultValue = "") String year, Model model) {
        int now = shop.today().getYear();
        int asked = year.matches("[12][0-9]{3}") ? Integer.parseInt(year) : now;
        model.addAttribute("year", asked);
        model.addAttribute("thisYear", now);
        model.addAttribute("takings", list.of(asked));
        return "supplies/takings";
    }

    @GetMapping("/takings/{id}")
    String show(@PathVariable UUID id, Model model) {
        Taking taking = documents.find(Taking.class, id).orElseThrow(() -> new NotFound("taking " + id));
        model.addAttribute("taking", taking);
        model.addAttribute("supply", find(taking.supplyId()));
        model.addAttribute("cost", settled.takenCost(id));
        model.addAttribute("waiting", settled.waiting(id));
        return "supplies/taken";
    }

    @PostMapping("/takings/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        UUID supply =
                documents.find(Taking.class, id).map(Taking::supplyId).orElseThrow(() -> new NotFound("taking " + id));
        try {
            documents.remove(Taking.class, id);
            Notice.next(redirect, "supplies.taking.removed");
        } catch (Refused sealed) {
            Notice.next(redirect, "supplies.sealed");
        }
        return "redirect:/supplies/" + supply;
    }

    private Optional<Taking> read(SupplyCatalog.Known supply, CountForm form, Answers answers) {
        UUID id = answers.id("id", form.id, "supplies.error.form-id");
        LocalDate date = answers.date("date", form.date);
        String note = answers.note("note", form.note, NOTE);
        return answers.quantity(
                        "quantity", form.quantity, supply.facts().dimension(), SupplyMeasures.of(supply.facts()))
                .filter(quantity -> {
                    if (quantity.signum() == 0) {
                        answers.wrong("quantity", "supplies.error.nothing");
                    }
                    return quantity.signum() > 0;
                })
                .map(quantity -> new Taking(id, date, note, supply.id(), quantity, form.ownUseTax)
                        .asExpense(supply.facts().wear() == Wear.AT_ONCE));
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
        return catalog.find(id).orElseThrow(() -> new NotFound("taking " + id));
    }

    private String page(Model model, SupplyCatalog.Known supply) {
        model.addAttribute("supply", supply);
        model.addAttribute("left", story.left(supply.id()));
        return "supplies/take";
    }
}
