package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
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
import patinary.web.NotFound;
import patinary.web.Notice;

/** Takes a set apart: each piece on an offer of its own, at a price that is proposed from its share. */
@Controller
@RequestMapping("/offers/{id}/split")
class SplitController {

    private final SellingDocuments documents;
    private final OfferGroups groups;
    private final PieceFinder pieces;
    private final SellingDays days;
    private final CurrentShop shop;
    private final Refusal refusal;

    SplitController(
            SellingDocuments documents,
            OfferGroups groups,
            PieceFinder pieces,
            SellingDays days,
            CurrentShop shop,
            Refusal refusal) {
        this.documents = documents;
        this.groups = groups;
        this.pieces = pieces;
        this.days = days;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        Offer.Content set = content(id);
        Map<UUID, Amount> shares = SetSplit.shares(set);
        SplitForm form = new SplitForm();
        form.version = documents.read(Offer.class, id, Offer::version).orElseThrow();
        form.date = days.today();
        refs(set).values().stream().sorted(Comparator.comparing(PieceRef::code)).forEach(piece -> {
            SplitForm.Part part = new SplitForm.Part();
            part.piece = piece.id().toString();
            part.price = shop.currency().plain(shares.get(piece.id()));
            form.parts.add(part);
        });
        return page(id, set, form, model);
    }

    @PostMapping
    String split(
            @PathVariable UUID id,
            @ModelAttribute("form") SplitForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Offer.Content set = content(id);
        Answers answers = new Answers(errors, shop.currency());
        LocalDate day = days.read(answers, "date", form.date);
        if (day.isBefore(set.date())) {
            answers.wrong("date", "selling.error.step");
        }
        List<SetSplit.Part> parts = parts(set, form, answers);
        if (!errors.hasErrors()) {
            try {
                groups.split(id, form.version, day, parts);
            } catch (Refused refused) {
                refusal.tell(errors, refused);
            }
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(id, set, form, model);
        }
        Notice.next(redirect, "selling.split.done", String.valueOf(parts.size()));
        return "redirect:/offers/" + id;
    }

    private List<SetSplit.Part> parts(Offer.Content set, SplitForm form, Answers answers) {
        Map<UUID, PieceRef> refs = refs(set);
        List<SetSplit.Part> parts = new ArrayList<>();
        for (int i = 0; i < form.parts.size(); i++) {
            SplitForm.Part typed = form.parts.get(i);
            PieceRef piece = refs.values().stream()
                    .filter(one -> one.id().toString().equals(typed.piece))
                    .findFirst()
                    .orElseThrow(() -> new NotFound("Piece of the set " + typed.piece));
            if (!typed.price.isBlank()) {
                parts.add(new SetSplit.Part(
                        piece.id(), piece.title(), answers.amount("parts[" + i + "].price", typed.price)));
            }
        }
        return parts;
    }

    private Map<UUID, PieceRef> refs(Offer.Content set) {
        return pieces.byId(
                set.pieces().stream().map(Offer.OfferedPiece::pieceId).toList());
    }

    private Offer.Content content(UUID id) {
        return documents
                .read(Offer.class, id, Offer::content)
                .filter(set -> set.pieces().size() > 1 && set.endedOn() == null)
                .orElseThrow(() -> new NotFound("Set " + id));
    }

    private String page(UUID id, Offer.Content set, SplitForm form, Model model) {
        Map<String, PieceRef> named = new java.util.HashMap<>();
        refs(set).forEach((piece, ref) -> named.put(piece.toString(), ref));
        model.addAttribute("form", form);
        model.addAttribute("offer", set);
        model.addAttribute("offerId", id);
        model.addAttribute("pieces", named);
        return "selling/offer-split";
    }
}
