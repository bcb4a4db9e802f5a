package patinary.pieces;

import jakarta.servlet.http.HttpServletResponse;
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
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.Notice;

/** Joining pieces into one and splitting one into several. */
@Controller
@RequestMapping("/pieces")
class RegroupingController {

    private static final int PARTS_AT_FIRST = 2;
    private static final int MOST_PARTS = 50;

    private final PieceDesk desk;
    private final PiecesAtHand atHand;
    private final RegroupingReading reading;
    private final PieceDocuments documents;
    private final Refusal refusal;
    private final CurrentShop shop;

    RegroupingController(
            PieceDesk desk,
            PiecesAtHand atHand,
            RegroupingReading reading,
            PieceDocuments documents,
            Refusal refusal,
            CurrentShop shop) {
        this.desk = desk;
        this.atHand = atHand;
        this.reading = reading;
        this.documents = documents;
        this.refusal = refusal;
        this.shop = shop;
    }

    @GetMapping("/join")
    String askToJoin(@RequestParam(defaultValue = "") String piece, Model model) {
        JoinForm form = new JoinForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        form.into = piece;
        Ids.read(piece).ifPresent(id -> form.pieces.add(id.toString()));
        model.addAttribute("form", form);
        return joinPage(form, model);
    }

    /** To look for pieces draws the form again and stores nothing. */
    @PostMapping("/join")
    String join(
            @ModelAttribute("form") JoinForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (form.looksForPieces(action)) {
            return joinPage(form, model);
        }
        UUID next = record(reading.join(form, errors), errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return joinPage(form, model);
        }
        Notice.next(redirect, "pieces.join.done");
        return "redirect:/pieces/" + next;
    }

    @GetMapping(Ids.PATH + "/split")
    String askToSplit(@PathVariable UUID id, Model model) {
        SplitForm form = new SplitForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        for (int i = 0; i < PARTS_AT_FIRST; i++) {
            form.parts.add(new SplitForm.PartForm());
        }
        model.addAttribute("form", form);
        return splitPage(id, model);
    }

    /** The button for one more part draws the form again and stores nothing. */
    @PostMapping(Ids.PATH + "/split")
    String split(
            @PathVariable UUID id,
            @ModelAttribute("form") SplitForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (action.equals("add")) {
            if (form.parts.size() < MOST_PARTS) {
                form.parts.add(new SplitForm.PartForm());
            }
            return splitPage(id, model);
        }
        UUID next = record(reading.split(id, form, errors), errors);
        if (errors.hasErrors()) {
            while (form.parts.size() < PARTS_AT_FIRST) {
                form.parts.add(new SplitForm.PartForm());
            }
            response.setStatus(422);
            return splitPage(id, model);
        }
        Notice.next(redirect, "pieces.split.done");
        return "redirect:/pieces/" + next;
    }

    private UUID record(RegroupingPlan plan, BindingResult errors) {
        if (!errors.hasErrors()) {
            try {
                return documents.regroup(plan);
            } catch (Refused refused) {
                refusal.tell(errors, refused);
            }
        }
        return plan.id();
    }

    private String joinPage(JoinForm form, Model model) {
        // Whatever takes up the others is one of them, and is not lost while she looks for those.
        Ids.read(form.into)
                .map(UUID::toString)
                .filter(into -> !form.pieces.contains(into))
                .ifPresent(form.pieces::add);
        PiecesAtHand.Offer offer = atHand.offer(form, null);
        model.addAttribute("atHand", offer);
        model.addAttribute("here", offer.tickedFirst());
        return "pieces/join";
    }

    private String splitPage(UUID id, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("facts", desk.read(id).facts());
        return "pieces/split";
    }
}
