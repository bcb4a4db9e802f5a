package patinary.spending;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import java.util.UUID;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Document;
import patinary.ledger.Refused;
import patinary.web.Answers;
import patinary.web.Notice;

/** The pages that add, change and remove one kind of money document. */
abstract class MoneyController<D extends Document, F extends MoneyForm> {

    private final MoneyKind<D, F> kind;
    private final MoneyDesk desk;

    MoneyController(MoneyKind<D, F> kind) {
        this.kind = kind;
        this.desk = kind.desk;
    }

    @GetMapping("/new")
    String fresh(@RequestParam Map<String, String> asked, Model model) {
        F form = kind.blank();
        form.id = UUID.randomUUID().toString();
        form.date = desk.shop.today().toString();
        kind.prefill(form, asked);
        return page(model, form, true);
    }

    @PostMapping("/new")
    String record(
            @ModelAttribute("form") F form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, desk.shop.currency());
        UUID id = answers.id("", form.id, "spending.error.form");
        D document = kind.read(kind.facts(id, form, answers), form, answers);
        if (!answers.anyWrong() && accepted(errors, () -> desk.book.record(document))) {
            Notice.next(redirect, "spending.recorded");
            return "redirect:" + kind.home();
        }
        response.setStatus(422);
        return page(model, form, true);
    }

    @GetMapping("/{id}")
    String show(@PathVariable UUID id, Model model) {
        D document = desk.book.find(kind.type, id);
        F form = kind.form(document);
        form.id = id.toString();
        form.version = document.version();
        form.date = document.date().toString();
        form.note = document.note();
        return page(model, form, false);
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") F form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        form.id = id.toString();
        Answers answers = new Answers(errors, desk.shop.currency());
        D typed = kind.read(kind.facts(id, form, answers), form, answers);
        if (!answers.anyWrong()
                && accepted(
                        errors,
                        () -> desk.book.change(kind.type, id, form.version, stored -> kind.rewrite(stored, typed)))) {
            Notice.next(redirect, "spending.changed");
            return "redirect:" + kind.home();
        }
        response.setStatus(422);
        return page(model, form, false);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        String kept = kind.keeps(id);
        if (!kept.isEmpty()) {
            Notice.next(redirect, kept);
            return "redirect:/" + kind.name + "/" + id;
        }
        try {
            desk.book.remove(kind.type, id);
        } catch (Refused refused) {
            Notice.next(redirect, "spending.remove-refused");
            return "redirect:/" + kind.name + "/" + id;
        }
        Notice.next(redirect, "spending.removed");
        return "redirect:" + kind.home();
    }

    private boolean accepted(BindingResult errors, Runnable deed) {
        try {
            deed.run();
            return true;
        } catch (Refused refused) {
            desk.refusal.tell(errors, refused);
            return false;
        }
    }

    private String page(Model model, F form, boolean fresh) {
        model.addAttribute("form", form);
        model.addAttribute("kind", kind.name);
        model.addAttribute("fresh", fresh);
        model.addAttribute("home", kind.home());
        model.addAttribute("places", desk.places());
        kind.furnish(model, form);
        return "spending/" + kind.name;
    }
}
