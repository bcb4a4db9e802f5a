package patinary.arrangements;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
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
import patinary.web.NotFound;
import patinary.web.Notice;

/** Pieces that belong to other people: what is agreed, what is here, what is owed for those that are sold. */
@Controller
@RequestMapping("/arrangements")
class ArrangementsController {

    private final Owned owned;
    private final OwnedDesk desk;

    ArrangementsController(Owned owned, OwnedDesk desk) {
        this.owned = owned;
        this.desk = desk;
    }

    @GetMapping
    String list(Model model) {
        List<Owned.Row> rows = owned.all();
        model.addAttribute(
                "commissions", rows.stream().filter(Owned.Row::isCommission).toList());
        model.addAttribute(
                "consigned", rows.stream().filter(row -> !row.isCommission()).toList());
        model.addAttribute("typed", desk.prices(rows));
        model.addAttribute("owed", owned.owed());
        return "arrangements/list";
    }

    @GetMapping("/new/{kind}")
    String blank(@PathVariable String kind, Model model) {
        return page(model, desk.blank(), arrangement(kind), "/arrangements/new/" + kind);
    }

    @PostMapping("/new/{kind}")
    String take(
            @PathVariable String kind,
            @ModelAttribute("form") OwnedForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (desk.take(form, arrangement(kind), errors)) {
            Notice.next(redirect, "arrangements.taken");
            return "redirect:/arrangements";
        }
        response.setStatus(422);
        return page(model, form, arrangement(kind), "/arrangements/new/" + kind);
    }

    @GetMapping("/pieces/{piece}")
    String terms(@PathVariable UUID piece, Model model) {
        return page(model, desk.form(piece), of(piece), "/arrangements/pieces/" + piece);
    }

    @PostMapping("/pieces/{piece}")
    String change(
            @PathVariable UUID piece,
            @ModelAttribute("form") OwnedForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (desk.change(piece, form, errors)) {
            Notice.next(redirect, "arrangements.changed");
            return "redirect:/arrangements";
        }
        response.setStatus(422);
        return page(model, form, of(piece), "/arrangements/pieces/" + piece);
    }

    @PostMapping("/pieces/{piece}/remove")
    String remove(@PathVariable UUID piece, RedirectAttributes redirect) {
        boolean gone = desk.remove(piece);
        Notice.next(redirect, gone ? "arrangements.removed" : "arrangements.not-removed");
        return "redirect:/arrangements";
    }

    private Arrangement of(UUID piece) {
        return Arrangement.valueOf(desk.terms(piece).arrangement());
    }

    private static Arrangement arrangement(String kind) {
        return switch (kind) {
            case "commission" -> Arrangement.COMMISSION;
            case "consigned" -> Arrangement.CONSIGNED;
            default -> throw new NotFound("Arrangement " + kind.toLowerCase(Locale.ROOT));
        };
    }

    private String page(Model model, OwnedForm form, Arrangement arrangement, String action) {
        model.addAttribute("form", form);
        model.addAttribute("commission", arrangement == Arrangement.COMMISSION);
        model.addAttribute("fresh", action.startsWith("/arrangements/new/"));
        model.addAttribute("action", action);
        model.addAttribute("places", desk.places());
        return "arrangements/form";
    }
}
