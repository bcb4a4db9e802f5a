package patinary.shop;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
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
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import patinary.web.Ids;
import patinary.web.Notice;

/** The owner's page of links for an accountant. */
@Controller
@RequestMapping("/shop/accountant")
class AccountantController {

    /** A link is for one year's work; common practice, no source. */
    private static final int LONGEST_DAYS = 400;

    private static final int USUAL_DAYS = 60;

    private final AccountantLinks links;
    private final CurrentShop shop;

    AccountantController(AccountantLinks links, CurrentShop shop) {
        this.links = links;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        AccountantForm form = new AccountantForm();
        form.endsOn = shop.today().plusDays(USUAL_DAYS).toString();
        model.addAttribute("form", form);
        return page(model);
    }

    @PostMapping
    String make(
            @ModelAttribute("form") AccountantForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors);
        answers.text("forWhom", form.forWhom, Answers.NAME, "shop.error.accountant.for-whom");
        answers.date("endsOn", form.endsOn, "shop.error.accountant.ends-on");
        if (!errors.hasFieldErrors("endsOn") && !isNear(LocalDate.parse(form.endsOn))) {
            errors.rejectValue("endsOn", "shop.error.accountant.ends-on");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model);
        }
        String secret = links.make(form.forWhom, LocalDate.parse(form.endsOn));
        redirect.addFlashAttribute("secret", address(secret));
        Notice.next(redirect, "shop.accountant.made");
        return "redirect:/shop/accountant";
    }

    @PostMapping(Ids.PATH + "/end")
    String end(@PathVariable UUID id, RedirectAttributes redirect) {
        links.end(id);
        Notice.next(redirect, "shop.accountant.ended");
        return "redirect:/shop/accountant";
    }

    private boolean isNear(LocalDate day) {
        LocalDate today = shop.today();
        return !day.isBefore(today) && !day.isAfter(today.plusDays(LONGEST_DAYS));
    }

    private static String address(String secret) {
        return ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/for-the-accountant/")
                .path(secret)
                .toUriString();
    }

    private String page(Model model) {
        model.addAttribute("links", links.all());
        model.addAttribute("today", shop.today());
        return "shop/accountant";
    }
}
