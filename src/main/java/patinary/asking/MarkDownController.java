package patinary.asking;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.Notice;

/** The mark-downs that are due: she ticks which to take, and may take each back the same day. */
@Controller
@RequestMapping("/mark-downs")
class MarkDownController {

    private final MarkDowns downs;
    private final MarkDownPlan plan;
    private final CurrentShop shop;
    private final Refusal refusal;

    MarkDownController(MarkDowns downs, MarkDownPlan plan, CurrentShop shop, Refusal refusal) {
        this.downs = downs;
        this.plan = plan;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String list(Model model) {
        List<Suggestion> due = downs.due();
        MarkDownForm form = new MarkDownForm();
        due.forEach(suggestion -> form.rows.add(row(suggestion)));
        return page(form, due, model);
    }

    @PostMapping
    String take(
            @ModelAttribute("form") MarkDownForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        List<MarkDowns.Chosen> chosen = read(form, errors);
        if (!errors.hasErrors()) {
            take(chosen, errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return again(form, model);
        }
        Notice.next(redirect, "asking.down.taken", String.valueOf(chosen.size()));
        return "redirect:/mark-downs";
    }

    @PostMapping("/{id}/back")
    String back(@PathVariable UUID id, RedirectAttributes redirect) {
        try {
            Notice.next(redirect, downs.takeBack(id) ? "asking.down.back" : "asking.down.not-back");
        } catch (Refused refused) {
            Notice.next(redirect, "asking.down.not-back");
        }
        return "redirect:/mark-downs";
    }

    private void take(List<MarkDowns.Chosen> chosen, BindingResult errors) {
        try {
            downs.take(chosen);
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        } catch (OptimisticLockingFailureException stale) {
            errors.reject("asking.error.stale");
        }
    }

    private List<MarkDowns.Chosen> read(MarkDownForm form, BindingResult errors) {
        Answers answers = new Answers(errors, shop.currency());
        List<MarkDowns.Chosen> chosen = new ArrayList<>();
        for (int i = 0; i < form.rows.size(); i++) {
            MarkDownForm.Row row = form.rows.get(i);
            if (row.take) {
                Amount price = answers.amount("rows[" + i + "].price", row.price);
                UUID offer = answers.id("", row.offer, "asking.error.stale");
                long before = row.before.matches("\\d{1,18}") ? Long.parseLong(row.before) : -1;
                chosen.add(new MarkDowns.Chosen(offer, Amount.of(before), price));
            }
        }
        if (chosen.isEmpty()) {
            answers.wrong("", "asking.error.none-ticked");
        }
        return chosen;
    }

    /** What is due may have changed: what was typed and ticked is kept for the offers that still are. */
    private String again(MarkDownForm typed, Model model) {
        var before = typed.rows.stream()
                .filter(row -> Ids.read(row.offer).isPresent())
                .collect(Collectors.toMap(row -> row.offer, row -> row, (one, other) -> one));
        List<Suggestion> due = downs.due();
        List<MarkDownForm.Row> rows = due.stream()
                .map(suggestion -> {
                    MarkDownForm.Row fresh = row(suggestion);
                    MarkDownForm.Row was = before.get(fresh.offer);
                    return was != null && was.before.equals(fresh.before) ? was : fresh;
                })
                .toList();
        typed.rows = new ArrayList<>(rows);
        return page(typed, due, model);
    }

    private MarkDownForm.Row row(Suggestion suggestion) {
        MarkDownForm.Row row = new MarkDownForm.Row();
        row.offer = suggestion.offerId().toString();
        row.before = String.valueOf(suggestion.present().minor());
        row.price = shop.currency().plain(suggestion.down().price());
        return row;
    }

    private String page(MarkDownForm form, List<Suggestion> due, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("due", due);
        model.addAttribute("steps", plan.steps());
        model.addAttribute("taken", downs.takenToday());
        return "asking/mark-downs";
    }
}
