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
import patinary.shop.MoneyPlace;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Selling at the stall, in a few taps: find what is on offer, take the money. */
@Controller
@RequestMapping("/sales/quick")
class QuickSaleController {

    private final OfferList offers;
    private final SaleBasket basket;
    private final SaleFilling filling;
    private final SaleAnswers reader;
    private final SellingDocuments documents;
    private final ChannelBook channels;
    private final MoneyChoices money;
    private final Refusal refusal;

    QuickSaleController(
            OfferList offers,
            SaleBasket basket,
            SaleFilling filling,
            SaleAnswers reader,
            SellingDocuments documents,
            ChannelBook channels,
            MoneyChoices money,
            Refusal refusal) {
        this.offers = offers;
        this.basket = basket;
        this.filling = filling;
        this.reader = reader;
        this.documents = documents;
        this.channels = channels;
        this.money = money;
        this.refusal = refusal;
    }

    /** One find leads straight on to its form. */
    @GetMapping
    String find(@RequestParam(defaultValue = "") String q, Model model) {
        List<OfferList.Row> rows = offers.live(q);
        if (!q.isBlank() && rows.size() == 1) {
            return "redirect:/sales/quick/" + rows.get(0).offerId();
        }
        model.addAttribute("q", q);
        model.addAttribute("rows", rows);
        return "selling/quick";
    }

    @GetMapping("/{offer}")
    String form(@PathVariable UUID offer, Model model) {
        SaleForm sale = filling.blank();
        basket.addOffer(sale, offer);
        if (sale.lines.isEmpty()) {
            throw new NotFound("Offer " + offer);
        }
        QuickSaleForm form = new QuickSaleForm();
        form.id = sale.id;
        form.date = sale.date;
        form.price = sale.lines.get(0).price;
        Optional<MoneyPlace> cash = money.cash();
        form.place = cash.map(place -> place.id().toString()).orElse("");
        form.channel = channels.all().stream()
                .filter(channel -> form.place.equals(channel.moneyPlaceId().toString()))
                .map(channel -> channel.id().toString())
                .findFirst()
                .orElse(sale.channel);
        return page(offer, form, model);
    }

    @PostMapping("/{offer}")
    String sell(
            @PathVariable UUID offer,
            @ModelAttribute("form") QuickSaleForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        UUID id = FormId.read(form.id);
        SaleForm sale = filling.blank();
        basket.addOffer(sale, offer);
        if (sale.lines.isEmpty()) {
            throw new NotFound("Offer " + offer);
        }
        sale.lines.get(0).price = form.price;
        sale.date = form.date;
        sale.channel = form.channel;
        sale.place = form.place;
        record(sale, id, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(offer, form, model);
        }
        Notice.next(redirect, "selling.quick.done", sale.lines.get(0).title);
        return "redirect:/sales/quick";
    }

    private void record(SaleForm sale, UUID id, BindingResult errors) {
        BindingResult own = new org.springframework.validation.DirectFieldBindingResult(sale, "sale");
        Optional<SaleContent> content = reader.read(sale, own, id, null);
        own.getFieldErrors()
                .forEach(error -> errors.rejectValue(
                        field(error.getField()), String.valueOf(error.getCode()), error.getArguments(), null));
        if (content.isPresent()) {
            try {
                Sale handedOver = new Sale(id, content.get());
                handedOver.posted(content.get().date());
                documents.record(handedOver);
            } catch (Refused refused) {
                refusal.tell(errors, refused);
            }
        }
    }

    /** Where the short form shows what the long one would have shown in its first line. */
    private static String field(String field) {
        return switch (field) {
            case "date", "channel", "place" -> field;
            default -> "price";
        };
    }

    private String page(UUID offer, QuickSaleForm form, Model model) {
        model.addAttribute("offer", offer);
        model.addAttribute("row", offers.find(offer).get(0));
        model.addAttribute("form", form);
        model.addAttribute("channels", channels.choices());
        model.addAttribute("places", money.choices());
        return "selling/quick-sale";
    }
}
