package patinary.sending;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
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
import patinary.web.NotFound;
import patinary.web.Notice;

/** One loss in the mail with the usual ways to settle it; takes in what the carrier paid. */
@Controller
@RequestMapping("/claims" + Ids.PATH)
class ClaimController {

    private final Losses losses;
    private final SendingList list;
    private final PaidFrom places;
    private final CurrentShop shop;
    private final Refusal refusal;
    private final MessageSource messages;

    ClaimController(
            Losses losses,
            SendingList list,
            PaidFrom places,
            CurrentShop shop,
            Refusal refusal,
            MessageSource messages) {
        this.losses = losses;
        this.list = list;
        this.places = places;
        this.shop = shop;
        this.refusal = refusal;
        this.messages = messages;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        Loss loss = loss(id);
        CompensationForm form = new CompensationForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        form.amount = loss.claimedMinor() == null ? "" : shop.currency().plain(Amount.of(loss.claimedMinor()));
        return page(loss, form, model);
    }

    @PostMapping("/paid")
    String paid(
            @PathVariable UUID id,
            @ModelAttribute("form") CompensationForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Loss loss = loss(id);
        Answers answers = new Answers(errors, shop.currency());
        LocalDate day = answers.date("date", form.date);
        if (!day.equals(LocalDate.EPOCH) && (day.isBefore(loss.noticedOn()) || day.isAfter(shop.today()))) {
            answers.wrong("date", "sending.error.day");
        }
        Amount amount = answers.amount("amount", form.amount);
        if (!answers.anyWrong() && amount.isZero()) {
            answers.wrong("amount", "sending.error.zero");
        }
        UUID place = places.read(answers, "place", form.place);
        if (!errors.hasErrors()) {
            record(loss, form, day, place, amount, errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(loss, form, model);
        }
        Notice.next(redirect, "sending.paid.saved");
        return "redirect:/claims/" + id;
    }

    private void record(
            Loss loss, CompensationForm form, LocalDate day, UUID place, Amount amount, BindingResult errors) {
        String note = messages.getMessage(
                "sending.paid.note", new Object[] {loss.reference()}, LocaleContextHolder.getLocale());
        try {
            losses.paid(loss, Ids.read(form.id).orElseGet(UUID::randomUUID), day, place, amount, note.strip());
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
    }

    private Loss loss(UUID id) {
        return losses.find(id).orElseThrow(() -> new NotFound("Loss " + id));
    }

    private String page(Loss loss, CompensationForm form, Model model) {
        model.addAttribute("loss", loss);
        model.addAttribute("sale", list.find(loss.saleId()).orElseThrow());
        model.addAttribute("form", form);
        model.addAttribute("places", places.choices());
        return "sending/claim";
    }
}
