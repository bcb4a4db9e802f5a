package patinary.places;

import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.Notice;
import patinary.web.Window;

/** The list of places, what is in each, and moving many pieces at once. */
@Controller
@RequestMapping("/places")
class PlacesController {

    private final Places places;
    private final PieceCodes codes;
    private final CurrentShop shop;

    PlacesController(Places places, PieceCodes codes, CurrentShop shop) {
        this.places = places;
        this.codes = codes;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("places", places.all());
        model.addAttribute("unsaid", places.in("", Window.of(null)).total());
        return "places/places";
    }

    @GetMapping("/one")
    String one(
            @RequestParam(defaultValue = "") String place,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        RenameForm form = new RenameForm();
        form.place = place;
        form.name = place;
        model.addAttribute("form", form);
        return onePage(place, page, model);
    }

    @PostMapping("/rename")
    String rename(
            @ModelAttribute("form") RenameForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        String name = new Answers(errors, shop.currency()).text("name", form.name, Places.NAME, "places.error.name");
        if (errors.hasErrors()) {
            response.setStatus(422);
            return onePage(form.place, null, model);
        }
        places.rename(form.place, name);
        Notice.next(redirect, "places.renamed", name);
        return "redirect:/places";
    }

    @GetMapping("/move")
    String ask(@RequestParam(defaultValue = "") String place, Model model) {
        PlaceForm form = new PlaceForm();
        form.place = place;
        model.addAttribute("form", form);
        return movePage(model);
    }

    @PostMapping("/move")
    String move(
            @ModelAttribute("form") PlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        String place = answers.text("place", form.place, Places.NAME, "places.error.place");
        Set<UUID> chosen = chosen(form, answers);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return movePage(model);
        }
        int moved = places.move(chosen, place);
        Notice.next(redirect, "places.moved", String.valueOf(moved), place);
        redirect.addAttribute(form.from.isEmpty() ? "place" : "code", form.from.isEmpty() ? place : form.from);
        return form.from.isEmpty() ? "redirect:/places/one" : "redirect:/p";
    }

    private Set<UUID> chosen(PlaceForm form, Answers answers) {
        Set<UUID> chosen = new LinkedHashSet<>();
        form.pieces.forEach(id -> Ids.read(id).ifPresent(chosen::add));
        PieceCodes.Read read = codes.read(CodeText.split(form.codes));
        read.pieces().forEach(piece -> chosen.add(piece.id()));
        if (!read.unknown().isEmpty()) {
            answers.wrong("codes", "places.error.unknown", String.join(", ", read.unknown()));
        } else if (chosen.isEmpty()) {
            answers.wrong("codes", "places.error.none");
        }
        return chosen;
    }

    private String movePage(Model model) {
        model.addAttribute("places", places.all());
        return "places/move";
    }

    private String onePage(String place, @Nullable Integer page, Model model) {
        List<Places.Place> all = places.all();
        model.addAttribute("place", place);
        model.addAttribute("places", all);
        model.addAttribute("rows", places.in(place, Window.of(page)));
        return "places/one-place";
    }
}
