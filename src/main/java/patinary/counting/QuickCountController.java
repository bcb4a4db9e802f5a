package patinary.counting;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.phone.Delivery;
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.SupplyCount;
import patinary.web.Answers;
import patinary.web.Notice;

/** Counting many supplies quickly, phone in hand, one after the other. */
@Controller
@RequestMapping("/count")
class QuickCountController {

    private final CountPage page;
    private final CountDesk desk;
    private final SupplyCatalog catalog;
    private final CurrentShop shop;
    private final Refusal refusal;

    QuickCountController(CountPage page, CountDesk desk, SupplyCatalog catalog, CurrentShop shop, Refusal refusal) {
        this.page = page;
        this.desk = desk;
        this.catalog = catalog;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String count(@RequestParam(defaultValue = "") String supply, @Nullable Principal who, Model model) {
        if (who == null) {
            page.shell(model);
            return "counting/count";
        }
        QuickCountForm form = new QuickCountForm();
        form.supply = supply;
        page.fill(model, form);
        return "counting/count";
    }

    @PostMapping
    String keep(
            @ModelAttribute("form") QuickCountForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        UUID id = answers.id("id", form.id, "counting.error.form-id");
        Optional<SupplyCatalog.Known> supply = supply(form, answers);
        try {
            Optional<SupplyCount> count =
                    supply.flatMap(known -> new QuickCountReading(form, answers, known).read(id, shop.today()));
            if (!answers.anyWrong() && count.isPresent() && supply.isPresent()) {
                desk.record(count.get());
                Notice.next(redirect, "counting.kept", supply.get().facts().name());
                page.next(supply.get().id()).ifPresent(next -> redirect.addAttribute("supply", next));
                return "redirect:/count";
            }
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
        response.setStatus(422);
        page.fill(model, form);
        return "counting/count";
    }

    /** The same from a phone, maybe days later; the day is the one it was counted on. */
    @PostMapping(headers = Delivery.KEY)
    ResponseEntity<?> deliver(@ModelAttribute("form") QuickCountForm form, BindingResult errors, Delivery delivery) {
        Answers answers = new Answers(errors, shop.currency());
        return delivery.once(errors, () -> {
            Optional<SupplyCatalog.Known> supply = supply(form, answers);
            Optional<SupplyCount> count = supply.flatMap(
                    known -> new QuickCountReading(form, answers, known).read(delivery.key(), shop.today()));
            if (answers.anyWrong() || count.isEmpty() || supply.isEmpty()) {
                return null;
            }
            desk.record(count.get());
            return new Delivery.Stored(
                    "/supplies/counts/" + delivery.key(),
                    "counting.kept",
                    supply.get().facts().name());
        });
    }

    private Optional<SupplyCatalog.Known> supply(QuickCountForm form, Answers answers) {
        Optional<SupplyCatalog.Known> supply = answers.optionalId("supply", form.supply, "counting.error.supply")
                .flatMap(catalog::find);
        if (supply.isEmpty() && !answers.anyWrong()) {
            answers.wrong("supply", "counting.error.supply");
        }
        return supply;
    }
}
