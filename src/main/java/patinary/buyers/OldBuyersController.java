package patinary.buyers;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Notice;

/** Names that are old: those who bought nothing for some months and owe nothing, to be erased at once. */
@Controller
@RequestMapping("/buyers/old")
class OldBuyersController {

    private static final int MOST_MONTHS = 600;

    private final Buyers buyers;
    private final Erasing erasing;
    private final CurrentShop shop;

    OldBuyersController(Buyers buyers, Erasing erasing, CurrentShop shop) {
        this.buyers = buyers;
        this.erasing = erasing;
        this.shop = shop;
    }

    /** The list for a number of months; all of it is ticked. */
    @GetMapping
    String show(
            @ModelAttribute("form") EraseForm form, BindingResult errors, Model model, HttpServletResponse response) {
        LocalDate day = day(form, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        List<Buyer> old = errors.hasErrors() ? List.of() : buyers.before(day);
        form.chosen =
                old.stream().map(buyer -> String.valueOf(buyer.documentId())).toList();
        return page(form, old, day, model);
    }

    @PostMapping
    String erase(
            @ModelAttribute("form") EraseForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Erasing.onlyOwner(request.isUserInRole(Erasing.OWNER));
        LocalDate day = day(form, errors);
        List<Buyer> old = errors.hasErrors() ? List.of() : buyers.before(day);
        if (!form.sure) {
            errors.rejectValue("sure", "buyers.error.sure");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, old, day, model);
        }
        List<String> names = old.stream()
                .filter(buyer -> form.chosen.contains(String.valueOf(buyer.documentId())))
                .map(Buyer::name)
                .toList();
        erasing.erase(names, new Erasing.Also(form.notes, form.orders));
        erasing.eraseNameless(day);
        Notice.next(redirect, "buyers.done", String.valueOf(names.size()));
        return "redirect:/buyers";
    }

    private LocalDate day(EraseForm form, BindingResult errors) {
        int months = new Answers(errors, shop.currency())
                .whole("months", form.months)
                .orElse(0);
        if (!errors.hasErrors() && (months < 1 || months > MOST_MONTHS)) {
            errors.rejectValue("months", "buyers.error.months");
            return shop.today();
        }
        return shop.today().minusMonths(months);
    }

    private static String page(EraseForm form, List<Buyer> old, LocalDate day, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("old", old);
        model.addAttribute("day", day);
        return "buyers/old";
    }
}
