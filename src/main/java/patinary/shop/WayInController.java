package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Notice;

/**
 * Where somebody with a code gives herself a password. Says one thing whether the name is unknown, the code wrong or late, or
 * there were too many tries.
 */
@Controller
@RequestMapping("/way-in")
class WayInController {

    private static final Logger LOG = LoggerFactory.getLogger(WayInController.class);

    private final WaysIn ways;
    private final PasswordRules passwords;
    private final Pauses pauses;
    private final CurrentShop shop;

    WayInController(WaysIn ways, PasswordRules passwords, Pauses pauses, CurrentShop shop) {
        this.ways = ways;
        this.passwords = passwords;
        this.pauses = pauses;
        this.shop = shop;
    }

    @GetMapping
    String ask(@ModelAttribute(name = "form", binding = false) WayInForm form) {
        return "shop/way-in";
    }

    @PostMapping
    String use(
            @ModelAttribute("form") WayInForm form,
            BindingResult errors,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors);
        answers.text("name", form.name, Answers.NAME, "people.error.own-name");
        answers.text("code", form.code, Answers.NAME, "people.error.code");
        passwords
                .refuse(form.password, form.name, shop.name())
                .ifPresent(reason -> errors.rejectValue("password", reason));
        // A good code is not used up by a password that is refused.
        if (!errors.hasErrors() && isLetIn(form, request.getRemoteAddr())) {
            LOG.info("A password was given by a code from {}", request.getRemoteAddr());
            Notice.next(redirect, "people.let-in");
            return "redirect:/sign-in";
        }
        if (!errors.hasErrors()) {
            LOG.warn("A code was refused from {}", request.getRemoteAddr());
            errors.rejectValue("code", "people.error.code-wrong");
        }
        response.setStatus(422);
        return "shop/way-in";
    }

    private boolean isLetIn(WayInForm form, String address) {
        if (!pauses.mayTry(form.name, address) || !ways.use(form.name, form.code, form.password)) {
            return false;
        }
        pauses.succeeded(form.name, address);
        return true;
    }
}
