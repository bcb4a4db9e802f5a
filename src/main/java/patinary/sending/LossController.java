package patinary.sending;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** What was lost or damaged in the mail, and the claims for it. */
@Controller
@RequestMapping("/claims")
class LossController {

    private static final List<Choice> WHATS =
            List.of(Choice.said("LOST", "sending.what.LOST"), Choice.said("DAMAGED", "sending.what.DAMAGED"));

    private final Losses losses;
    private final SendingList list;
    private final LossAnswers reader;
    private final CurrentShop shop;

    LossController(Losses losses, SendingList list, LossAnswers reader, CurrentShop shop) {
        this.losses = losses;
        this.list = list;
        this.reader = reader;
        this.shop = shop;
    }

    @GetMapping
    String claims(@RequestParam(required = false) @Nullable Integer page, Model model) {
        model.addAttribute("rows", losses.page(Window.of(page)));
        model.addAttribute("sums", losses.sums());
        return "sending/claims";
    }

    @GetMapping("/new")
    String blank(@RequestParam UUID sale, Model model) {
        LossForm form = new LossForm();
        form.id = UUID.randomUUID().toString();
        form.noticedOn = shop.today().toString();
        return page(form, require(sale), model);
    }

    @PostMapping("/new")
    String add(
            @RequestParam UUID sale,
            @ModelAttribute("form") LossForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        ToSend sold = require(sale);
        Losses.Facts facts = reader.read(form, sold.sale().soldOn(), reader.on(errors));
        UUID id = Ids.read(form.id).orElseGet(UUID::randomUUID);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, sold, model);
        }
        losses.add(id, sale, facts);
        Notice.next(redirect, "sending.loss.saved");
        return "redirect:/claims/" + id;
    }

    @GetMapping(Ids.PATH + "/edit")
    String edit(@PathVariable UUID id, Model model) {
        Loss loss = loss(id);
        LossForm form = new LossForm();
        form.id = id.toString();
        form.version = loss.version();
        form.what = loss.what().name();
        form.noticedOn = loss.noticedOn().toString();
        form.words = loss.words();
        form.claimedOn = text(loss.claimedOn());
        form.claimed = loss.claimedMinor() == null ? "" : shop.currency().plain(Amount.of(loss.claimedMinor()));
        form.reference = loss.reference();
        form.refusedOn = text(loss.refusedOn());
        model.addAttribute("loss", loss);
        return page(form, require(loss.saleId()), model);
    }

    @PostMapping(Ids.PATH + "/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") LossForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Loss loss = loss(id);
        Answers answers = reader.on(errors);
        Losses.Facts facts = reader.read(form, loss.soldOn(), answers);
        if (loss.incomeId() != null && facts.refusedOn() != null) {
            answers.wrong("refusedOn", "sending.error.paid-already");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            model.addAttribute("loss", loss);
            return page(form, require(loss.saleId()), model);
        }
        losses.change(id, form.version, facts);
        Notice.next(redirect, "sending.loss.saved");
        return "redirect:/claims/" + id;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        losses.remove(id);
        Notice.next(redirect, "sending.loss.removed");
        return "redirect:/claims";
    }

    private Loss loss(UUID id) {
        return losses.find(id).orElseThrow(() -> new NotFound("Loss " + id));
    }

    private ToSend require(UUID sale) {
        return list.find(sale).orElseThrow(() -> new NotFound("Sale " + sale));
    }

    private static String text(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }

    private static String page(LossForm form, ToSend sale, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("sale", sale.sale());
        model.addAttribute("whats", WHATS);
        return "sending/loss-form";
    }
}
