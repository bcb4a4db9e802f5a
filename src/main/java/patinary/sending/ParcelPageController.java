package patinary.sending;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.QuantityWords;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** How one sale goes: where to, how heavy, by which service, and what that costs by her own table. */
@Controller
@RequestMapping("/sending" + Ids.PATH)
class ParcelPageController {

    private static final int DESTINATION = 500;
    private static final int SENT_FROM = 200;
    private static final int TRACKING = 120;

    /** What a service would take, with the id of the document that one tap makes of it. */
    record Offered(UUID carrierId, String name, Amount cost, UUID id) {}

    private final SendingList list;
    private final Sendings sendings;
    private final Carriers carriers;
    private final CurrentShop shop;
    private final MessageSource messages;

    ParcelPageController(
            SendingList list, Sendings sendings, Carriers carriers, CurrentShop shop, MessageSource messages) {
        this.list = list;
        this.sendings = sendings;
        this.carriers = carriers;
        this.shop = shop;
        this.messages = messages;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        ToSend sale = require(id);
        return page(sale, form(sale), model);
    }

    @PostMapping
    String keep(
            @PathVariable UUID id,
            @ModelAttribute("form") SendingForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        ToSend sale = require(id);
        Sendings.Facts facts = read(form, new Answers(errors, shop.currency()));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(sale, form, model);
        }
        sendings.keep(id, form.version, facts);
        Notice.next(redirect, "sending.kept");
        return "redirect:/sending/" + id;
    }

    /** Records what her table says of a service as postage of today, paid from that service's usual place. */
    @PostMapping("/postage")
    String postage(
            @PathVariable UUID id,
            @RequestParam UUID carrier,
            @RequestParam UUID document,
            RedirectAttributes redirect) {
        Offered offered = offered(require(id)).stream()
                .filter(one -> one.carrierId().equals(carrier))
                .findFirst()
                .orElseThrow(() -> new NotFound("Rate of carrier " + carrier));
        UUID place = carriers.find(carrier).orElseThrow().placeId();
        String note = messages.getMessage(
                "sending.postage.note", new Object[] {offered.name()}, LocaleContextHolder.getLocale());
        try {
            sendings.paid(document, id, place, note, offered.cost());
            Notice.next(redirect, "sending.postage.done");
        } catch (Refused refused) {
            Notice.next(redirect, "sending.error.sealed");
        }
        return "redirect:/sending/" + id;
    }

    private Sendings.Facts read(SendingForm form, Answers answers) {
        String sentFrom = answers.note("sentFrom", form.sentFrom, SENT_FROM);
        String destination = answers.note("destination", form.destination, DESTINATION);
        var grams = Measured.weight(answers, "weight", form.weight);
        String size = Measured.size(answers, "size", form.size);
        Optional<UUID> service = answers.optionalId("service", form.service, "sending.error.service");
        if (service.isPresent() && carriers.find(service.get()).isEmpty()) {
            answers.wrong("service", "sending.error.service");
        }
        String tracking = answers.note("tracking", form.tracking, TRACKING);
        return new Sendings.Facts(
                form.pickedUp, sentFrom, destination, grams.orElse(null), size, service.orElse(null), tracking);
    }

    /** What was typed; what was not, from the things themselves. */
    private static SendingForm form(ToSend sale) {
        SendingForm form = new SendingForm();
        ToSend.Head head = sale.sale();
        Unpacked unpacked = sale.unpacked();
        form.version = head.version();
        form.pickedUp = head.pickedUp();
        form.sentFrom = head.sentFrom();
        form.destination = head.destination();
        var grams = head.weightG() == null ? unpacked.grams() : head.weightG();
        form.weight = grams == null ? "" : QuantityWords.typed(grams, Dimension.MASS);
        form.size = head.size().isBlank() ? unpacked.size() : head.size();
        form.service = head.serviceId() == null ? "" : head.serviceId().toString();
        form.tracking = head.tracking();
        return form;
    }

    private List<Offered> offered(ToSend sale) {
        var grams = sale.sale().weightG();
        if (grams == null || sale.sale().pickedUp()) {
            return List.of();
        }
        Optional<BoxSize> size = BoxSize.kept(sale.sale().size());
        return carriers.all().stream()
                .flatMap(carrier -> carrier.table().cost(shop.today(), grams, size).stream()
                        .map(cost -> new Offered(carrier.id(), carrier.name(), cost, UUID.randomUUID())))
                .sorted((a, b) -> a.cost().compareTo(b.cost()))
                .toList();
    }

    private ToSend require(UUID sale) {
        return list.find(sale).orElseThrow(() -> new NotFound("Sale " + sale));
    }

    private String page(ToSend sale, SendingForm form, Model model) {
        model.addAttribute("row", sale);
        model.addAttribute("today", shop.today());
        model.addAttribute("offered", offered(sale));
        model.addAttribute("form", form);
        model.addAttribute(
                "services",
                carriers.all().stream()
                        .map(carrier -> Choice.named(carrier.id().toString(), carrier.name()))
                        .toList());
        return "sending/parcel";
    }
}
