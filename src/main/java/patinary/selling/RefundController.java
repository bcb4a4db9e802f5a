package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
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
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Gives a buyer money back, with or without the thing. */
@Controller
@RequestMapping("/sales/{id}/refund")
class RefundController {

    /** The sale, and how far the refunds of each part of it can still go. */
    private record Known(SaleContent sale, List<SalePage.Part> parts, List<RefundLimit> limits) {}

    private static final List<Choice> WAYS = List.of(
            Choice.said("PLACE", "selling.refund.way.PLACE"),
            Choice.said("OWED", "selling.refund.way.OWED"),
            Choice.said("STORE_CREDIT", "selling.refund.way.STORE_CREDIT"));

    private static final List<Choice> BACKS = List.of(
            Choice.said("", "selling.refund.back.KEPT"),
            Choice.said("SHELF", "selling.refund.back.SHELF"),
            Choice.said("LOST", "selling.refund.back.LOST"));

    private final SellingDocuments documents;
    private final RefundAnswers reader;
    private final RefundFilling filling;
    private final Undelivered undelivered;
    private final SalePage sales;
    private final RefundLimits limits;
    private final MoneyChoices money;
    private final CurrentShop shop;
    private final Refusal refusal;

    RefundController(
            SellingDocuments documents,
            RefundAnswers reader,
            RefundFilling filling,
            Undelivered undelivered,
            SalePage sales,
            RefundLimits limits,
            MoneyChoices money,
            CurrentShop shop,
            Refusal refusal) {
        this.documents = documents;
        this.reader = reader;
        this.filling = filling;
        this.undelivered = undelivered;
        this.sales = sales;
        this.limits = limits;
        this.money = money;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String blank(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "false") boolean cancelled,
            @RequestParam(defaultValue = "false") boolean exchange,
            Model model) {
        Known known = known(id);
        return page(id, form(id, known, cancelled, exchange), known, model);
    }

    @PostMapping
    String give(
            @PathVariable UUID id,
            @ModelAttribute("form") RefundForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        SaleContent sale = sale(id);
        Optional<RefundContent> refund = reader.read(form, errors, id, sale, sales.parts(id));
        refund.ifPresent(
                content -> record(new Refund(FormId.read(form.id), content), RefundAnswers.never(form), errors));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(id, form, known(id), model);
        }
        if (form.exchange && refund.isPresent() && refund.get().way() == Way.STORE_CREDIT) {
            return other(sale, refund.get(), redirect);
        }
        Notice.next(redirect, "selling.refund.saved");
        return "redirect:/sales/" + id;
    }

    /** On to the sale of what the buyer takes instead, paid by the credit as far as it goes. */
    private String other(SaleContent sale, RefundContent refund, RedirectAttributes redirect) {
        redirect.addAttribute("date", refund.date());
        redirect.addAttribute("channel", sale.channelId());
        redirect.addAttribute("buyer", sale.buyer());
        redirect.addAttribute("credit", shop.currency().plain(refund.total()));
        Notice.next(redirect, "selling.exchange.next", shop.currency().plain(refund.total()));
        return "redirect:/sales/new";
    }

    private void record(Refund refund, List<UUID> never, BindingResult errors) {
        try {
            undelivered.cancel(refund, never);
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
    }

    private SaleContent sale(UUID id) {
        return documents.read(Sale.class, id, Sale::content).orElseThrow(() -> new NotFound("Sale " + id));
    }

    private Known known(UUID id) {
        SaleContent sale = sale(id);
        List<SalePage.Part> parts = sales.parts(id);
        return new Known(sale, parts, limits.of(id, sale, parts));
    }

    private RefundForm form(UUID id, Known known, boolean cancelled, boolean exchange) {
        if (exchange) {
            return filling.exchanged(id, known.sale(), known.parts(), known.limits());
        }
        return cancelled
                ? filling.cancelled(id, known.sale(), known.parts(), known.limits())
                : filling.blank(known.sale(), known.parts(), known.limits());
    }

    private String page(UUID id, RefundForm form, Known known, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("form", form);
        SaleContent sale = known.sale();
        SalePage.RefundRest before = sales.givenBack(id);
        model.addAttribute("sale", sale);
        model.addAttribute("parts", known.parts());
        model.addAttribute("limits", known.limits());
        model.addAttribute("shippingLeft", sale.shipping().minus(Amount.of(before.shippingMinor())));
        model.addAttribute("taxLeft", sale.tax().minus(Amount.of(before.taxMinor())));
        model.addAttribute("feeLeft", sale.fee().minus(Amount.of(before.feeMinor())));
        model.addAttribute("backs", BACKS);
        model.addAttribute("ways", WAYS);
        model.addAttribute("places", money.choices());
        return "selling/refund";
    }
}
