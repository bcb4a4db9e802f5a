package patinary.listing;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.Notice;

/** The lines of care: what comes with the program, in her words, and her own. */
@Controller
@RequestMapping("/listing/care")
class CareController {

    private static final int WORDS = 400;

    private record Thing(UUID id, String name) {}

    private final Care care;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final CurrentShop shop;

    CareController(Care care, JdbcClient jdbc, TransactionTemplate transaction, CurrentShop shop) {
        this.care = care;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        return page(asKept(new CareForm()), model);
    }

    @PostMapping
    String say(
            @ModelAttribute("form") CareForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        List<String> ids = care.brought().stream().map(CareLine::id).toList();
        form.lines.removeIf(line -> !ids.contains(line.id));
        for (int i = 0; i < form.lines.size(); i++) {
            answers.note("lines[" + i + "].words", form.lines.get(i).words, WORDS);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, model);
        }
        transaction.executeWithoutResult(
                status -> form.lines.forEach(line -> care.say(line.id, line.words.strip(), line.leftOut)));
        Notice.next(redirect, "listing.care.saved");
        return "redirect:/listing/care";
    }

    @PostMapping("/own")
    String add(
            @ModelAttribute("form") CareForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        UUID of = answers.id("of", form.of, "listing.error.of");
        String words = answers.text("words", form.words, WORDS, "listing.error.words");
        if (!errors.hasErrors() && !care.add(of, words)) {
            answers.wrong("of", "listing.error.of");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(asKept(form), model);
        }
        Notice.next(redirect, "listing.care.added");
        return "redirect:/listing/care";
    }

    @PostMapping("/own" + Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        care.remove(id);
        Notice.next(redirect, "listing.care.removed");
        return "redirect:/listing/care";
    }

    /** Her words for the program's lines as they are kept; the form of a line of her own leaves them alone. */
    private CareForm asKept(CareForm form) {
        Map<String, Care.Word> hers = care.words();
        form.lines.clear();
        for (CareLine brought : care.brought()) {
            CareForm.Line line = new CareForm.Line();
            Care.Word word = hers.get(brought.id());
            line.id = brought.id();
            line.words = word == null ? "" : word.words();
            line.leftOut = word != null && word.leftOut();
            form.lines.add(line);
        }
        return form;
    }

    private List<Choice> things() {
        return Stream.of(
                        "select id, name from supply_line order by lower(name), id",
                        "select u.id, l.name || ': ' || u.name as name from supply u"
                                + " join supply_line l on l.id = u.supply_line_id order by lower(l.name), lower(u.name), u.id")
                .flatMap(sql -> jdbc.sql(sql).query(Thing.class).list().stream())
                .map(thing -> Choice.named(thing.id().toString(), thing.name()))
                .toList();
    }

    private String page(CareForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("brought", care.brought());
        model.addAttribute("own", care.own());
        model.addAttribute("things", things());
        return "listing/care";
    }
}
