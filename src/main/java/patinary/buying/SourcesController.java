package patinary.buying;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The list of sources, and one source with what is known of it. */
@Controller
@RequestMapping("/sources")
class SourcesController {

    private static final UUID NONE = new UUID(0, 0);

    private final SourceDesk desk;
    private final SourceList list;
    private final CurrentShop shop;

    SourcesController(SourceDesk desk, SourceList list, CurrentShop shop) {
        this.desk = desk;
        this.list = list;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("sources", list.all());
        return "buying/sources";
    }

    @GetMapping("/new")
    String fresh(Model model) {
        model.addAttribute("form", new SourceForm());
        return page(model, null);
    }

    @GetMapping("/{id}")
    String edit(@PathVariable UUID id, Model model) {
        Source source = desk.find(id).orElseThrow(() -> new NotFound("source " + id));
        SourceForm form = new SourceForm();
        form.version = source.version();
        form.name = source.name();
        form.note = source.note();
        form.resaleCertificate = source.resaleCertificate();
        Percent tax = source.taxPercent();
        form.taxPercent = tax == null ? "" : tax.value().stripTrailingZeros().toPlainString();
        model.addAttribute("form", form);
        return page(model, id);
    }

    @PostMapping
    String add(
            @ModelAttribute("form") SourceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Percent tax = read(form, errors, NONE);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, null);
        }
        desk.add(UUID.randomUUID(), form, tax);
        Notice.next(redirect, "buying.source.saved");
        return "redirect:/sources";
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") SourceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        desk.find(id).orElseThrow(() -> new NotFound("source " + id));
        Percent tax = read(form, errors, id);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, id);
        }
        desk.change(id, form, tax);
        Notice.next(redirect, "buying.source.saved");
        return "redirect:/sources";
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        try {
            desk.remove(id);
        } catch (DataIntegrityViolationException inUse) {
            Notice.next(redirect, "buying.source.in-use");
            return "redirect:/sources/" + id;
        }
        Notice.next(redirect, "buying.source.removed");
        return "redirect:/sources";
    }

    /** Notes what is wrong; the percentage where there is one that can be read. */
    private @Nullable Percent read(SourceForm form, BindingResult errors, UUID own) {
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, 120, "buying.error.name");
        answers.note("note", form.note, 1000);
        answers.note("resaleCertificate", form.resaleCertificate, 60);
        if (!name.isEmpty() && desk.isTaken(name, own)) {
            answers.wrong("name", "buying.error.name-taken");
        }
        return AmountOrPercent.readPercent(answers, "taxPercent", form.taxPercent);
    }

    private String page(Model model, @Nullable UUID id) {
        model.addAttribute("id", id);
        if (id != null) {
            list.one(id).ifPresent(row -> model.addAttribute("facts", row));
        }
        return "buying/source";
    }
}
