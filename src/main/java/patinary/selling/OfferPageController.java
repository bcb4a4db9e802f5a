package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
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
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The page of one offer, and what becomes of it: another price, a pause, its end. */
@Controller
@RequestMapping("/offers/{id}")
class OfferPageController {

    private record Stored(Offer.Content content, long version) {}

    private final OfferList offers;
    private final SellingDocuments documents;
    private final OfferGroups groups;
    private final PieceFinder pieces;
    private final ChannelBook channels;
    private final SellingDays days;
    private final CurrentShop shop;
    private final Refusal refusal;

    OfferPageController(
            OfferList offers,
            SellingDocuments documents,
            OfferGroups groups,
            PieceFinder pieces,
            ChannelBook channels,
            SellingDays days,
            CurrentShop shop,
            Refusal refusal) {
        this.offers = offers;
        this.documents = documents;
        this.groups = groups;
        this.pieces = pieces;
        this.channels = channels;
        this.days = days;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String show(@PathVariable UUID id, @RequestParam(defaultValue = "") String price, Model model) {
        OfferStep form = new OfferStep();
        form.date = days.today();
        form.price = price;
        form.others = true;
        return page(id, form, model);
    }

    /** One step in the life of an offer; {@code act} says which. */
    @PostMapping
    String step(
            @PathVariable UUID id,
            @ModelAttribute("form") OfferStep form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate day = days.read(answers, "date", form.date);
        Amount price = form.act.equals("price") ? answers.amount("price", form.price) : Amount.ZERO;
        if (!errors.hasErrors()) {
            take(id, form, day, content -> next(form.act, content, day, price), errors, answers);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(id, form, model);
        }
        Notice.next(redirect, "selling.offer.done." + form.act);
        return "redirect:/offers/" + id;
    }

    @PostMapping("/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        try {
            documents.remove(Offer.class, id);
        } catch (Refused refused) {
            Notice.next(redirect, "selling.error.sealed");
            return "redirect:/offers/" + id;
        }
        Notice.next(redirect, "selling.offer.removed");
        return "redirect:/offers";
    }

    private static Optional<Offer.Content> next(String act, Offer.Content offer, LocalDate day, Amount price) {
        return switch (act) {
            case "price" -> OfferChange.priced(offer, day, price);
            case "pause" -> OfferChange.paused(offer, day);
            case "resume" -> OfferChange.resumed(offer, day);
            case "withdraw" -> OfferChange.ended(offer, day);
            case "back" -> OfferChange.ended(offer, null);
            default -> Optional.empty();
        };
    }

    private void take(
            UUID id,
            OfferStep form,
            LocalDate day,
            Function<Offer.Content, Optional<Offer.Content>> step,
            BindingResult errors,
            Answers answers) {
        try {
            if (!groups.step(id, form.version, day, form.others, step)) {
                answers.wrong("date", "selling.error.step");
            }
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
    }

    private Offer.Content content(UUID id) {
        return documents.read(Offer.class, id, Offer::content).orElseThrow(() -> new NotFound("Offer " + id));
    }

    private String page(UUID id, OfferStep form, Model model) {
        Stored stored = documents
                .read(Offer.class, id, offer -> new Stored(offer.content(), offer.version()))
                .orElseThrow(() -> new NotFound("Offer " + id));
        Offer.Content content = stored.content();
        if (form.version < 0) {
            form.version = stored.version();
        }
        List<UUID> ids =
                content.pieces().stream().map(Offer.OfferedPiece::pieceId).toList();
        model.addAttribute("form", form);
        model.addAttribute("offer", content);
        model.addAttribute("row", offers.find(id).get(0));
        Map<UUID, PieceRef> refs = pieces.byId(ids);
        model.addAttribute("pieces", refs);
        OfferedRest.of(content, refs).ifPresent(rest -> {
            model.addAttribute("rest", rest);
            model.addAttribute("restPrice", shop.currency().plain(rest.price()));
        });
        model.addAttribute("beside", offers.beside(id));
        model.addAttribute("alike", offers.alike(id));
        model.addAttribute(
                "channels",
                channels.all().stream()
                        .filter(channel -> content.channels().contains(channel.id()))
                        .toList());
        return "selling/offer";
    }
}
