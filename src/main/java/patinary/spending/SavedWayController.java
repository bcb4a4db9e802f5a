package patinary.spending;

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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The ways that are driven often. */
@Controller
@RequestMapping("/ways")
class SavedWayController {

    private static final String HOME = "redirect:/trips";

    private final SavedWays ways;
    private final CurrentShop shop;

    SavedWayController(SavedWays ways, CurrentShop shop) {
        this.ways = ways;
        this.shop = shop;
    }

    @GetMapping("/new")
    String fresh(Model model) {
        SavedWayForm form = new SavedWayForm();
        form.id = UUID.randomUUID().toString();
        return page(model, form, true);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") SavedWayForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        SavedWay typed = read(form, errors, Ids.read(form.id).orElseGet(UUID::randomUUID));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form, true);
        }
        ways.add(typed);
        Notice.next(redirect, "spending.way.saved");
        return HOME;
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, Model model) {
        SavedWay way = find(id);
        SavedWayForm form = new SavedWayForm();
        form.id = id.toString();
        form.version = way.version();
        form.startPlace = way.startPlace();
        form.destination = way.destination();
        form.purpose = way.purpose();
        form.miles = Miles.plain(way.milesOneWay());
        return page(model, form, false);
    }

    @PostMapping(Ids.PATH)
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") SavedWayForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        find(id);
        form.id = id.toString();
        SavedWay typed = read(form, errors, id);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form, false);
        }
        ways.change(typed);
        Notice.next(redirect, "spending.way.saved");
        return HOME;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        ways.remove(id);
        Notice.next(redirect, "spending.way.removed");
        return HOME;
    }

    private SavedWay read(SavedWayForm form, BindingResult errors, UUID id) {
        Answers answers = new Answers(errors, shop.currency());
        return new SavedWay(
                id,
                answers.text("startPlace", form.startPlace, TripKind.PLACE, "spending.error.start"),
                answers.text("destination", form.destination, TripKind.PLACE, "spending.error.destination"),
                answers.text("purpose", form.purpose, TripKind.PURPOSE, "spending.error.purpose"),
                Miles.aboveZero(answers, "miles", form.miles, "spending.error.miles"),
                form.version);
    }

    private SavedWay find(UUID id) {
        return ways.find(id).orElseThrow(() -> new NotFound("way " + id));
    }

    private static String page(Model model, SavedWayForm form, boolean fresh) {
        model.addAttribute("form", form);
        model.addAttribute("fresh", fresh);
        return "spending/way";
    }
}
