package patinary.covering;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.Errors;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The gross that a processor or marketplace reports, against the books. */
@Controller
@RequestMapping("/gross-reported")
class GrossController {

    private static final String HERE = "redirect:/gross-reported";
    private static final int NOTE = 2000;

    /** A figure in the list, and what of it no reason explains. */
    record Row(GrossReported reported, Amount unexplained) {}

    private final GrossBook book;
    private final CoverBook balances;
    private final CurrentShop shop;

    GrossController(GrossBook book, CoverBook balances, CurrentShop shop) {
        this.book = book;
        this.balances = balances;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute(
                "rows",
                book.all().stream()
                        .map(one -> new Row(one, book.bridge(one).unexplained()))
                        .toList());
        return "covering/gross-list";
    }

    /** The year before this one, of which a report arrives now. */
    @GetMapping("/new")
    String blank(Model model) {
        GrossForm form = new GrossForm();
        form.id = UUID.randomUUID().toString();
        int year = shop.today().getYear() - 1;
        form.from = LocalDate.of(year, 1, 1).toString();
        form.to = LocalDate.of(year, 12, 31).toString();
        return page(form, "/gross-reported/new", model);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") GrossForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        GrossReported typed = read(form, errors, Ids.read(form.id).orElseGet(UUID::randomUUID));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, "/gross-reported/new", model);
        }
        book.add(typed);
        Notice.next(redirect, "covering.gross.saved");
        return HERE + "/" + typed.id();
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, Model model) {
        GrossReported reported = reported(id);
        model.addAttribute("reported", reported);
        model.addAttribute("bridge", book.bridge(reported));
        model.addAttribute("near", book.near(reported));
        model.addAttribute(
                "turned",
                book.otherSide(reported).stream()
                        .map(GrossFacts.Paid::documentId)
                        .collect(Collectors.toSet()));
        return "covering/gross";
    }

    @GetMapping(Ids.PATH + "/edit")
    String edit(@PathVariable UUID id, Model model) {
        GrossReported reported = reported(id);
        GrossForm form = new GrossForm();
        form.id = id.toString();
        form.version = reported.version();
        form.place = reported.placeId().toString();
        form.from = reported.coversFrom().toString();
        form.to = reported.coversTo().toString();
        form.amount = shop.currency().plain(reported.amount());
        form.withPassedTax = reported.withPassedTax();
        form.note = reported.note();
        return page(form, "/gross-reported/" + id + "/edit", model);
    }

    @PostMapping(Ids.PATH + "/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") GrossForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        reported(id);
        GrossReported typed = read(form, errors, id);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, "/gross-reported/" + id + "/edit", model);
        }
        book.change(typed);
        Notice.next(redirect, "covering.gross.saved");
        return HERE + "/" + id;
    }

    @PostMapping(Ids.PATH + "/other-side")
    String turn(
            @PathVariable UUID id, @RequestParam(defaultValue = "") List<UUID> turned, RedirectAttributes redirect) {
        book.turn(reported(id), turned);
        Notice.next(redirect, "covering.gross.turned");
        return HERE + "/" + id;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        book.remove(reported(id).id());
        Notice.next(redirect, "covering.gross.removed");
        return HERE;
    }

    private GrossReported read(GrossForm form, Errors errors, UUID id) {
        Answers answers = new Answers(errors, shop.currency());
        UUID place = answers.id("place", form.place, "covering.error.place");
        if (!form.place.isBlank()
                && balances.places().stream().noneMatch(one -> one.id().equals(place))) {
            answers.wrong("place", "covering.error.place");
        }
        LocalDate from = answers.date("from", form.from);
        LocalDate to = answers.date("to", form.to);
        if (!answers.anyWrong() && to.isBefore(from)) {
            answers.wrong("to", "covering.error.days");
        }
        Amount amount = answers.amount("amount", form.amount);
        String note = answers.note("note", form.note, NOTE);
        GrossReported typed =
                new GrossReported(id, place, "", from, to, amount.minor(), form.withPassedTax, note, form.version);
        if (!answers.anyWrong() && book.isTaken(typed)) {
            answers.wrong("from", "covering.error.gross-taken");
        }
        return typed;
    }

    private GrossReported reported(UUID id) {
        return book.find(id).orElseThrow(() -> new NotFound("Reported gross " + id));
    }

    private String page(GrossForm form, String action, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("action", action);
        model.addAttribute(
                "places",
                balances.places().stream()
                        .map(one -> Choice.named(one.id().toString(), one.name()))
                        .toList());
        return "covering/gross-form";
    }
}
