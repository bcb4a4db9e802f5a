package patinary.buying;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlaces;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** What is owed, and paying it. */
@Controller
class BillsController {

    private final BillDesk desk;
    private final MoneyPlaces places;
    private final CurrentShop shop;
    private final Refusal refusal;

    BillsController(BillDesk desk, MoneyPlaces places, CurrentShop shop, Refusal refusal) {
        this.desk = desk;
        this.places = places;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping("/bills")
    String list(Model model) {
        List<BillDesk.Owed> owed = desk.owed();
        model.addAttribute("owed", owed);
        model.addAttribute(
                "total", owed.stream().mapToLong(BillDesk.Owed::amount).sum());
        return "buying/bills";
    }

    @GetMapping("/receipts/{receipt}/pay")
    String ask(@PathVariable UUID receipt, Model model) {
        Amount owed = desk.owed(receipt);
        if (!owed.isPositive()) {
            throw new NotFound("an amount owed for " + receipt);
        }
        BillForm form = new BillForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        form.amount = shop.currency().plain(owed);
        model.addAttribute("form", form);
        return page(model, receipt, owed);
    }

    @PostMapping("/receipts/{receipt}/pay")
    String pay(
            @PathVariable UUID receipt,
            @ModelAttribute("form") BillForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        UUID own = answers.id("id", form.id, "buying.error.id");
        Amount owed = desk.owed(receipt);
        if (desk.find(own).isEmpty()) {
            record(answers, own, receipt, form, owed, errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, receipt, owed);
        }
        Notice.next(redirect, "buying.bill.saved");
        return "redirect:/bills";
    }

    @GetMapping("/bills/{id}/remove")
    String askToRemove(@PathVariable UUID id, Model model) {
        model.addAttribute("bill", find(id));
        return "buying/bill-remove";
    }

    @PostMapping("/bills/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        find(id);
        try {
            desk.remove(id);
            Notice.next(redirect, "buying.bill.removed");
        } catch (Refused sealed) {
            Notice.next(redirect, "buying.error.sealed");
        }
        return "redirect:/bills";
    }

    private void record(Answers answers, UUID own, UUID document, BillForm form, Amount owed, BindingResult errors) {
        LocalDate date = answers.date("date", form.date);
        BuyingDates.check(answers, "date", date, shop);
        Amount amount = answers.amount("amount", form.amount);
        if (amount.compareTo(owed) > 0) {
            answers.wrong(
                    "amount", "buying.error.more-than-owed", shop.currency().plain(owed));
        } else if (amount.isZero() && !form.amount.isBlank()) {
            answers.wrong("amount", "buying.error.amount-zero");
        }
        UUID place = PaidWith.read(form.place, places.findAllByOrderByName())
                .filter(with -> with.way() == Way.PLACE)
                .map(PaidWith::place)
                .orElse(null);
        if (place == null) {
            answers.wrong("place", "buying.error.place");
        }
        String note = answers.note("note", form.note, 2000);
        if (place != null && !errors.hasErrors()) {
            try {
                desk.pay(own, date, note, document, place, amount);
            } catch (Refused refused) {
                refusal.tell(errors, refused);
            }
        }
    }

    private BillDesk.Paid find(UUID id) {
        return desk.find(id).orElseThrow(() -> new NotFound("bill " + id));
    }

    private String page(Model model, UUID document, Amount owed) {
        model.addAttribute("document", document);
        model.addAttribute("owed", owed);
        model.addAttribute(
                "places",
                places.findAllByOrderByName().stream()
                        .map(place -> Choice.named(place.id().toString(), place.name()))
                        .toList());
        return "buying/bill";
    }
}
