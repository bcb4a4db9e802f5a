package patinary.pieces;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
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
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Letting a piece go, and taking that back. */
@Controller
@RequestMapping("/pieces" + Ids.PATH + "/let-go")
class LettingGoController {

    private static final int NOTE = 2000;

    private final PieceDesk desk;
    private final PieceDocuments documents;
    private final PieceStory story;
    private final Refusal refusal;
    private final CurrentShop shop;

    LettingGoController(PieceDesk desk, PieceDocuments documents, PieceStory story, Refusal refusal, CurrentShop shop) {
        this.desk = desk;
        this.documents = documents;
        this.story = story;
        this.refusal = refusal;
        this.shop = shop;
    }

    @GetMapping
    String ask(@PathVariable UUID id, Model model) {
        LettingGoForm form = new LettingGoForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        model.addAttribute("form", form);
        return page(id, model);
    }

    @PostMapping
    String letGo(
            @PathVariable UUID id,
            @ModelAttribute("form") LettingGoForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        String code = desk.read(id).facts().code();
        LettingGo document = read(id, form, errors);
        if (!errors.hasErrors()) {
            try {
                documents.letGo(document);
            } catch (Refused refused) {
                refusal.tell(errors, refused);
            }
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(id, model);
        }
        Notice.next(redirect, "pieces.let-go.done", code);
        return "redirect:/pieces/" + id;
    }

    @PostMapping("/undo")
    String undo(@PathVariable UUID id, RedirectAttributes redirect) {
        PieceStory.Event gone =
                PieceStory.gone(story.events(id)).orElseThrow(() -> new NotFound("letting go of " + id));
        try {
            documents.takeBack(gone.documentId());
            Notice.next(redirect, "pieces.let-go.undone");
        } catch (Refused refused) {
            Notice.next(redirect, "pieces.not-undone");
        }
        return "redirect:/pieces/" + id;
    }

    private LettingGo read(UUID id, LettingGoForm form, BindingResult errors) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = Days.read(answers, form.date, shop);
        LettingGo.Reason reason = answers.word("reason", form.reason, LettingGo.Reason.class, "pieces.error.reason")
                .orElse(LettingGo.Reason.BROKEN);
        UUID own = Ids.read(form.id).orElseGet(UUID::randomUUID);
        return new LettingGo(own, date, answers.note("note", form.note, NOTE), id, reason);
    }

    private String page(UUID id, Model model) {
        boolean isHers = story.names(id).owner() == null;
        List<Choice> reasons = Stream.of(LettingGo.Reason.values())
                .filter(reason -> !isHers || reason != LettingGo.Reason.TO_OWNER)
                .map(reason -> Choice.said(reason.name(), "pieces.reason." + reason.name()))
                .toList();
        model.addAttribute("id", id);
        model.addAttribute("facts", desk.read(id).facts());
        model.addAttribute("reasons", reasons);
        return "pieces/let-go";
    }
}
