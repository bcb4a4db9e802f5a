package patinary.salestax;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The pages of her places of sales tax. */
@Controller
@RequestMapping("/tax-places")
class TaxPlaceController {

    private static final String HERE = "redirect:/tax-places";

    private final TaxPlaces places;
    private final TaxPlaceAnswers reader;
    private final CurrentShop shop;

    TaxPlaceController(TaxPlaces places, TaxPlaceAnswers reader, CurrentShop shop) {
        this.places = places;
        this.reader = reader;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        List<TaxPlace> all = places.all();
        LocalDate today = shop.today();
        model.addAttribute("places", all);
        model.addAttribute("rates", ratesOn(today, all));
        model.addAttribute("choices", places.choices());
        model.addAttribute("usuals", places.usuals());
        model.addAttribute("today", today);
        return "salestax/places";
    }

    private static List<Percent> ratesOn(LocalDate day, List<TaxPlace> places) {
        return places.stream()
                .flatMap(place -> place.ruleOn(day).stream())
                .map(TaxRule::percent)
                .toList();
    }

    @GetMapping("/new")
    String blank(Model model) {
        return fresh(form(), model);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") TaxPlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        UUID id = Ids.read(form.id).orElseGet(UUID::randomUUID);
        String name = reader.name(form, errors, id);
        TaxRule first = reader.rule(form, errors, Optional.empty());
        if (errors.hasErrors()) {
            response.setStatus(422);
            return fresh(form, model);
        }
        places.add(id, name, first);
        Notice.next(redirect, "salestax.place.saved", name);
        return HERE;
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, Model model) {
        return page(place(id), form(), model);
    }

    /** One more rate from a day on. */
    @PostMapping(Ids.PATH + "/rates")
    String addRate(
            @PathVariable UUID id,
            @ModelAttribute("form") TaxPlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        TaxPlace place = place(id);
        TaxRule rule = reader.rule(form, errors, Optional.of(place));
        if (errors.hasErrors()) {
            response.setStatus(422);
            form.name = place.name();
            return page(place, form, model);
        }
        places.addRate(id, rule);
        Notice.next(redirect, "salestax.rate.saved");
        return HERE + "/" + id;
    }

    @PostMapping(Ids.PATH + "/rates/{from}/remove")
    String removeRate(@PathVariable UUID id, @PathVariable LocalDate from, RedirectAttributes redirect) {
        boolean gone = places.removeRate(id, from);
        Notice.next(redirect, gone ? "salestax.rate.removed" : "salestax.rate.in-use");
        return HERE + "/" + id;
    }

    @PostMapping(Ids.PATH + "/name")
    String rename(
            @PathVariable UUID id,
            @ModelAttribute("form") TaxPlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        TaxPlace place = place(id);
        String name = reader.name(form, errors, id);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(place, form, model);
        }
        places.rename(id, form.version, name);
        Notice.next(redirect, "salestax.place.saved", name);
        return HERE + "/" + id;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        boolean gone = places.remove(id);
        Notice.next(redirect, gone ? "salestax.place.removed" : "salestax.place.in-use");
        return HERE;
    }

    @PostMapping("/usual/{channel}")
    String usual(
            @PathVariable UUID channel, @RequestParam(defaultValue = "") String place, RedirectAttributes redirect) {
        places.makeUsual(channel, Ids.read(place).orElse(null));
        Notice.next(redirect, "salestax.usual.saved");
        return HERE;
    }

    private TaxPlace place(UUID id) {
        return places.find(id).orElseThrow(() -> new NotFound("Tax place " + id));
    }

    private TaxPlaceForm form() {
        TaxPlaceForm form = new TaxPlaceForm();
        form.id = UUID.randomUUID().toString();
        form.validFrom = shop.today().toString();
        return form;
    }

    private static String fresh(TaxPlaceForm form, Model model) {
        model.addAttribute("form", form);
        return "salestax/place-new";
    }

    private String page(TaxPlace place, TaxPlaceForm form, Model model) {
        form.version = place.version();
        if (form.name.isBlank()) {
            form.name = place.name();
        }
        model.addAttribute("place", place);
        model.addAttribute("form", form);
        return "salestax/place";
    }
}
