package patinary.spending;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.UUID;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Document;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.web.Answers;
import patinary.web.Notice;

/** The pages that add, change and remove one kind of money document; each kind says what is its own. */
abstract class MoneyController<D extends Document, F extends MoneyForm> {

    private static final int NOTE = 2000;

    final MoneyDesk desk;
    private final Class<D> type;
    private final String kind;

    /** @param kind the name of its address, template and messages, for instance {@code owner-money} */
    MoneyController(MoneyDesk desk, Class<D> type, String kind) {
        this.desk = desk;
        this.type = type;
        this.kind = kind;
    }

    /** An empty form. */
    abstract F blank();

    /** The form of a stored document, without what all forms share. */
    abstract F form(D document);

    /** The document that the answers describe; harmless where there are errors. */
    abstract D read(Facts facts, F form, Answers answers);

    /** Takes over everything but the id. */
    abstract void rewrite(D stored, D typed);

    /** Puts the choices and hints of this kind on the page. */
    abstract void furnish(Model model, F form);

    /** Why a document cannot be removed, as a message key, or empty. */
    String keeps(UUID id) {
        return "";
    }

    @GetMapping("/new")
    String fresh(Model model) {
        F form = blank();
        form.id = UUID.randomUUID().toString();
        form.date = desk.shop.today().toString();
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
        D document = read(facts(id, form, answers), form, answers);
        if (!answers.anyWrong() && accepted(errors, () -> desk.book.record(document))) {
            Notice.next(redirect, "spending.recorded");
            return "redirect:/expenses";
        }
        response.setStatus(422);
        return page(model, form, true);
    }

    @GetMapping("/{id}")
    String show(@PathVariable UUID id, Model model) {
        D document = desk.book.find(type, id);
        F form = form(document);
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
        D typed = read(facts(id, form, answers), form, answers);
        if (!answers.anyWrong()
                && accepted(errors, () -> desk.book.change(type, id, form.version, stored -> rewrite(stored, typed)))) {
            Notice.next(redirect, "spending.changed");
            return "redirect:/expenses";
        }
        response.setStatus(422);
        return page(model, form, false);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        String kept = keeps(id);
        if (!kept.isEmpty()) {
            Notice.next(redirect, kept);
            return "redirect:/" + kind + "/" + id;
        }
        try {
            desk.book.remove(type, id);
        } catch (Refused refused) {
            Notice.next(redirect, "spending.remove-refused");
            return "redirect:/" + kind + "/" + id;
        }
        Notice.next(redirect, "spending.removed");
        return "redirect:/expenses";
    }

    /** What was typed of that which all kinds have. */
    record Facts(UUID id, LocalDate date, String note) {}

    /** An amount above zero. */
    Amount amount(Answers answers, String typed) {
        Amount amount = answers.amount("amount", typed);
        if (!answers.anyWrong() && amount.isZero()) {
            answers.wrong("amount", "spending.error.zero");
        }
        return amount;
    }

    String plain(Amount amount) {
        return desk.shop.currency().plain(amount);
    }

    private Facts facts(UUID id, F form, Answers answers) {
        LocalDate date = answers.date("date", form.date);
        if (!date.equals(LocalDate.EPOCH) && date.isBefore(desk.shop.firstDay())) {
            answers.wrong(
                    "date",
                    "spending.error.before-first-day",
                    desk.shop.firstDay().toString());
        }
        return new Facts(id, date, answers.note("note", form.note, NOTE));
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
        model.addAttribute("kind", kind);
        model.addAttribute("fresh", fresh);
        model.addAttribute("places", desk.places());
        furnish(model, form);
        return "spending/" + kind;
    }
}
