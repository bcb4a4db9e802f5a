package patinary.buying;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
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
import patinary.photos.PaperPhotos;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The form of a receipt, new or changed. Small buttons redraw it with what was typed; only "save" stores anything. */
@Controller
@RequestMapping("/receipts")
class ReceiptController {

    private static final String SAVE = "save";

    private final ReceiptDesk desk;
    private final ReceiptFill fill;
    private final ReceiptSettling settling;
    private final ReceiptChoices choices;
    private final ReceiptPieces pieces;
    private final Refusal refusal;
    private final PaperPhotos photos;

    ReceiptController(
            ReceiptDesk desk,
            ReceiptFill fill,
            ReceiptSettling settling,
            ReceiptChoices choices,
            ReceiptPieces pieces,
            Refusal refusal,
            PaperPhotos photos) {
        this.desk = desk;
        this.fill = fill;
        this.settling = settling;
        this.choices = choices;
        this.pieces = pieces;
        this.refusal = refusal;
        this.photos = photos;
    }

    /**
     * @param asked maybe a {@code source}, and supplies {@code wanted} to be written down beforehand; see {@link
     *     ReceiptFill#wished}. A map, because a list would be cut at the commas of a pack's name
     */
    @GetMapping("/new")
    String fresh(@RequestParam MultiValueMap<String, String> asked, Model model) {
        List<String> wanted = asked.getOrDefault("wanted", List.of());
        ReceiptForm form = fill.wished(Objects.requireNonNullElse(asked.getFirst("source"), ""), wanted);
        form.paidWith = choices.usual();
        model.addAttribute("form", form);
        return page(model, false);
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable UUID id, Model model) {
        model.addAttribute("form", fill.of(desk.read(id).orElseThrow(() -> new NotFound("receipt " + id))));
        return page(model, true);
    }

    @PostMapping
    String record(
            @ModelAttribute("form") ReceiptForm form,
            BindingResult errors,
            @RequestParam(defaultValue = SAVE) String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return submit(form, errors, action, false, model, response, redirect);
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") ReceiptForm form,
            BindingResult errors,
            @RequestParam(defaultValue = SAVE) String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (desk.read(id).isEmpty()) {
            throw new NotFound("receipt " + id);
        }
        form.id = id.toString();
        return submit(form, errors, action, true, model, response, redirect);
    }

    private String submit(
            ReceiptForm form,
            BindingResult errors,
            String action,
            boolean change,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (FormEdits.carryOut(form, action)) {
            return page(model, change);
        }
        FormEdits.tidy(form);
        ReceiptReader.Outcome outcome = settling.read(form, errors, action);
        if (!errors.hasErrors()) {
            store(outcome.draft(), change, errors);
        }
        if (errors.hasErrors()) {
            model.addAttribute("difference", outcome.difference());
            response.setStatus(422);
            return page(model, change);
        }
        Ids.read(form.photo)
                .ifPresent(photo -> photos.give(photo, outcome.draft().id()));
        Notice.next(redirect, change ? "buying.receipt.changed" : "buying.receipt.recorded");
        return "redirect:/receipts/" + outcome.draft().id();
    }

    private void store(ReceiptDraft draft, boolean change, BindingResult errors) {
        try {
            if (change) {
                desk.change(draft);
            } else {
                recordOnce(draft);
            }
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        } catch (PieceTaken taken) {
            errors.reject("buying.error.piece-taken");
        } catch (PieceInUse inUse) {
            errors.reject("buying.error.piece-in-use", new Object[] {pieces.name(inUse.piece())}, null);
        }
    }

    /** A clash means that the same receipt, or one that took the same next code, was stored at this moment. */
    private void recordOnce(ReceiptDraft draft) {
        try {
            desk.record(draft);
        } catch (DataIntegrityViolationException clash) {
            desk.record(draft);
        }
    }

    private String page(Model model, boolean change) {
        choices.offer(model);
        model.addAttribute("change", change);
        return "buying/receipt-form";
    }
}
