package patinary.spending;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlace;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Notice;

/** Where money is: the cash box, the bank, a card, a channel's balance. */
@Controller
@RequestMapping("/money-places")
class PlaceController {

    private static final int NAME = 120;

    private final PlaceDesk places;
    private final MoneyReports reports;
    private final CurrentShop shop;

    PlaceController(PlaceDesk places, MoneyReports reports, CurrentShop shop) {
        this.places = places;
        this.reports = reports;
        this.shop = shop;
    }

    @GetMapping("/new")
    String fresh(Model model) {
        PlaceForm form = new PlaceForm();
        form.kind = MoneyPlace.Kind.CASH.name();
        return page(model, form, "");
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") PlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        MoneyPlace.Kind kind = check(form, "", errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form, "");
        }
        places.add(form.name, kind);
        Notice.next(redirect, "spending.place.saved");
        return "redirect:/expenses";
    }

    @GetMapping("/{id}")
    String show(@PathVariable UUID id, Model model) {
        MoneyPlace place = places.find(id);
        PlaceForm form = new PlaceForm();
        form.version = place.version();
        form.name = place.name();
        form.kind = place.kind().name();
        return page(model, form, id.toString());
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") PlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        MoneyPlace place = places.find(id);
        MoneyPlace.Kind kind = check(form, place.name(), errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form, id.toString());
        }
        places.change(id, form.version, form.name, kind);
        Notice.next(redirect, "spending.place.saved");
        return "redirect:/expenses";
    }

    private MoneyPlace.Kind check(PlaceForm form, String ownName, BindingResult errors) {
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, NAME, "spending.error.place-name");
        if (!name.equalsIgnoreCase(ownName) && places.isTaken(name)) {
            answers.wrong("name", "spending.error.place-taken");
        }
        return answers.word("kind", form.kind, MoneyPlace.Kind.class, "spending.error.place-kind")
                .orElse(MoneyPlace.Kind.CASH);
    }

    private String page(Model model, PlaceForm form, String id) {
        List<Choice> kinds = Arrays.stream(MoneyPlace.Kind.values())
                .map(kind -> Choice.said(kind.name(), "spending.place.kind." + kind.name()))
                .toList();
        model.addAttribute("form", form);
        model.addAttribute("fresh", id.isEmpty());
        model.addAttribute("placeId", id);
        model.addAttribute("kinds", kinds);
        if (!id.isEmpty()) {
            model.addAttribute("there", reports.balance(UUID.fromString(id)));
        }
        return "spending/place";
    }
}
