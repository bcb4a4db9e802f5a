package patinary.bringing;

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
import patinary.web.NotFound;
import patinary.web.Notice;

/** The page on which she says what the columns of a file mean. */
@Controller
@RequestMapping("/sales/bring/{id}")
class MappingController {

    private final Drafts drafts;
    private final SavedMappings mappings;
    private final MappingAnswers answers;
    private final MappingPage page;

    MappingController(Drafts drafts, SavedMappings mappings, MappingAnswers answers, MappingPage page) {
        this.drafts = drafts;
        this.mappings = mappings;
        this.answers = answers;
        this.page = page;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        Drafts.Draft draft = draft(id);
        MappingForm form = MappingForm.of(draft.mapping());
        form.name = mappings.forHeader(Mapping.key(draft.mapping().head(draft.sheet())))
                .map(SavedMappings.Saved::name)
                .orElse("");
        return page.fill(model, draft, form);
    }

    @PostMapping
    String read(
            @PathVariable UUID id,
            @ModelAttribute("form") MappingForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "look") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Drafts.Draft draft = draft(id);
        Mapping typed = answers.read(form, draft.mapping(), errors);
        Drafts.Draft read = new Drafts.Draft(id, draft.fileName(), draft.content(), typed);
        boolean cutAnew = !typed.cutsAs(draft.mapping());
        Sheet sheet = read.sheet();
        Mapping mapping = cutAnew ? MappingGuess.columns(typed, sheet) : typed;
        boolean goOn = act.equals("save") && !cutAnew;
        if (goOn) {
            answers.check(mapping, form, errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page.fill(model, read, form);
        }
        drafts.keep(draft, goOn ? mapping : MappingGuess.forms(mapping, sheet));
        if (goOn && !form.name.isBlank()) {
            mappings.save(form.name.strip(), Mapping.key(mapping.head(sheet)), mapping);
            Notice.next(redirect, "bringing.mapping.saved", form.name.strip());
        }
        return "redirect:/sales/bring/" + id + (goOn ? "/rows" : "#preview");
    }

    private Drafts.Draft draft(UUID id) {
        return drafts.find(id).orElseThrow(() -> new NotFound("Draft " + id));
    }
}
