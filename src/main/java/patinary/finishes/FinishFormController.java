package patinary.finishes;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
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
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The form of a finish: new, taken over from another, and changed. */
@Controller
@RequestMapping("/finishes")
class FinishFormController {

    private final FinishBook book;
    private final FinishKeeping keeping;
    private final FinishPage page;
    private final SupplyCatalog catalog;
    private final CautionBook cautions;
    private final CurrentShop shop;
    private final MessageSource messages;

    FinishFormController(
            FinishBook book,
            FinishKeeping keeping,
            FinishPage page,
            SupplyCatalog catalog,
            CautionBook cautions,
            CurrentShop shop,
            MessageSource messages) {
        this.book = book;
        this.keeping = keeping;
        this.page = page;
        this.catalog = catalog;
        this.cautions = cautions;
        this.shop = shop;
        this.messages = messages;
    }

    /** @param like a finish whose steps and supplies are taken over, to be adapted */
    @GetMapping("/new")
    String fresh(@RequestParam(required = false) @Nullable UUID like, Model model) {
        FinishForm form =
                Optional.ofNullable(like).flatMap(book::find).map(this::copy).orElseGet(FinishForm::empty);
        return show(model, form, null);
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable UUID id, Model model) {
        return show(model, FinishForm.of(find(id)), id);
    }

    /** Any button but the main one: adds or drops a line, moves a step; nothing is stored. */
    @PostMapping(
            path = {"/new", "/{id}/edit"},
            params = "act")
    String rearrange(
            @PathVariable(required = false) @Nullable UUID id,
            @ModelAttribute("form") FinishForm form,
            @RequestParam String act,
            Model model) {
        switch (act) {
            case "step" -> form.steps.add(new FinishForm.StepLine());
            case "need" -> form.needs.add(new FinishForm.NeedLine());
            default -> FinishRows.rearrange(form, act);
        }
        return show(model, form, id);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") FinishForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        Finish finish = read(form, answers);
        UUID id = answers.id("id", form.id, "finishes.error.form-id");
        if (answers.anyWrong()) {
            response.setStatus(422);
            return show(model, form, null);
        }
        keeping.add(id, finish);
        Notice.next(redirect, "finishes.saved", finish.name());
        return "redirect:/finishes/" + id;
    }

    @PostMapping("/{id}/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") FinishForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        find(id);
        Answers answers = new Answers(errors, shop.currency());
        Finish finish = read(form, answers);
        if (answers.anyWrong()) {
            response.setStatus(422);
            return show(model, form, id);
        }
        keeping.change(id, form.version, finish);
        Notice.next(redirect, "finishes.saved", finish.name());
        return "redirect:/finishes/" + id;
    }

    private Finish read(FinishForm form, Answers answers) {
        return new FinishReading(
                        form,
                        answers,
                        catalog.all(),
                        cautions.all().stream().map(CautionBook.Text::id).collect(Collectors.toSet()))
                .finish();
    }

    private FinishForm copy(FinishBook.Kept kept) {
        FinishForm form = FinishForm.of(kept);
        form.id = UUID.randomUUID().toString();
        form.version = 0;
        form.name = messages.getMessage(
                "finishes.copy", new Object[] {kept.finish().name()}, LocaleContextHolder.getLocale());
        return form;
    }

    private String show(Model model, FinishForm form, @Nullable UUID id) {
        model.addAttribute("action", id == null ? "/finishes/new" : "/finishes/" + id + "/edit");
        model.addAttribute("back", id == null ? "/finishes" : "/finishes/" + id);
        model.addAttribute("fresh", id == null);
        page.form(model, form);
        return "finishes/edit";
    }

    private FinishBook.Kept find(UUID id) {
        return book.find(id).filter(kept -> !kept.removed()).orElseThrow(() -> new NotFound("finish " + id));
    }
}
