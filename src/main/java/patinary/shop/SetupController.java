package patinary.shop;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The first page ever seen: makes the owner and the shop, once. */
@Controller
@ConditionalOnWebApplication
@RequestMapping("/setup")
class SetupController {

    private final CurrentShop shop;
    private final SetupCode code;
    private final SetupAnswers answers;
    private final Opening opening;
    private final Clock clock;

    SetupController(CurrentShop shop, SetupCode code, SetupAnswers answers, Opening opening, Clock clock) {
        this.shop = shop;
        this.code = code;
        this.answers = answers;
        this.opening = opening;
        this.clock = clock;
    }

    @EventListener(ApplicationReadyEvent.class)
    void greet() {
        if (!shop.isOpen()) {
            code.offer();
        }
    }

    @GetMapping
    String ask(Model model, Locale locale) {
        onlyOnce();
        code.offer();
        SetupForm form = new SetupForm();
        form.timeZone = Offered.placeOf(ZoneId.systemDefault());
        form.firstDay =
                LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()).toString();
        form.language = locale.getLanguage();
        form.country = locale.getCountry();
        model.addAttribute("form", form);
        return page(model, locale);
    }

    @PostMapping
    String open(
            @ModelAttribute("form") SetupForm form,
            BindingResult errors,
            Model model,
            Locale locale,
            HttpSession session,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        onlyOnce();
        answers.check(form, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, locale);
        }
        opening.open(form);
        if (form.next.equals("opening")) {
            session.setAttribute(AfterSignIn.NEXT, "/opening");
        }
        Notice.next(redirect, "shop.setup.done", form.shopName);
        return "redirect:/sign-in";
    }

    private void onlyOnce() {
        if (shop.isOpen()) {
            throw new NotFound("The setup page, after setup");
        }
    }

    private static String page(Model model, Locale locale) {
        model.addAttribute("currencies", Offered.currencies(locale));
        model.addAttribute("taxTables", Offered.taxTables());
        model.addAttribute("costingMethods", Offered.costingMethods());
        model.addAttribute("timeZones", Offered.timeZones());
        model.addAttribute("languages", Offered.languages());
        model.addAttribute("countries", Offered.countries(locale));
        model.addAttribute("nextSteps", Offered.next());
        return "shop/setup";
    }
}
