package patinary.shop;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.web.Choice;
import patinary.web.Notice;

/** What the owner aims at when she buys and when she names a price; for her only. */
@Controller
@RequestMapping("/shop/aims")
class AimsController {

    private static final int LONGEST_HORIZON = 3650;
    private static final int ENDINGS = 120;
    private static final String RETURN = "RETURN";
    private static final List<Choice> KINDS =
            List.of(Choice.said("AMOUNT", "shop.aims.target.AMOUNT"), Choice.said(RETURN, "shop.aims.target.RETURN"));

    private final CurrentAims aims;
    private final CurrentShop shop;

    AimsController(CurrentAims aims, CurrentShop shop) {
        this.aims = aims;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        Aims now = aims.get();
        AimsForm form = new AimsForm();
        form.version = aims.version();
        form.horizonDays = String.valueOf(now.horizonDays());
        form.salvage = typed(now.salvage());
        form.target = typed(now.target());
        form.targetReturn = typed(now.targetReturn());
        form.targetKind = now.targetReturn() == null ? "AMOUNT" : RETURN;
        form.purchaseTax = typed(now.purchaseTax());
        form.priceEndings = now.priceEndings().toString();
        return page(model, form);
    }

    @PostMapping
    String keep(
            @ModelAttribute("form") AimsForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Aims read = read(form, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form);
        }
        aims.keep(read, form.version);
        Notice.next(redirect, "shop.aims.saved");
        return "redirect:/shop/aims";
    }

    private Aims read(AimsForm form, BindingResult errors) {
        patinary.web.Answers answers = new patinary.web.Answers(errors, shop.currency());
        int days = answers.whole("horizonDays", form.horizonDays).orElse(0);
        if (!errors.hasFieldErrors("horizonDays") && (days < 1 || days > LONGEST_HORIZON)) {
            answers.wrong("horizonDays", "shop.error.horizon");
        }
        Amount salvage = answers.optionalAmount("salvage", form.salvage).orElse(Amount.ZERO);
        Amount target = answers.optionalAmount("target", form.target).orElse(Amount.ZERO);
        Percent wished = share(answers, form.targetReturn);
        Percent tax = answers.percent("purchaseTax", form.purchaseTax).orElse(Percent.ZERO);
        String typed = answers.note("priceEndings", form.priceEndings, ENDINGS);
        Optional<PriceEndings> endings =
                PriceEndings.parse(typed, shop.currency().digits());
        if (endings.isEmpty()) {
            answers.wrong("priceEndings", "shop.error.endings", shop.currency().digits());
        }
        boolean asReturn = form.targetKind.equals(RETURN);
        return new Aims(
                days,
                salvage,
                asReturn ? Amount.ZERO : target,
                asReturn ? wished : null,
                tax,
                endings.orElseGet(() -> Aims.usual(shop.currency().digits()).priceEndings()));
    }

    /** A return may well be above 100 percent. */
    private static Percent share(patinary.web.Answers answers, String typed) {
        Optional<Percent> share = answers.decimal(
                        "targetReturn", typed.replace("%", "").strip(), "shop.error.return")
                .map(Percent::new);
        if (share.filter(one -> one.value().signum() < 0
                        || one.value().compareTo(java.math.BigDecimal.valueOf(LONGEST_HORIZON)) > 0)
                .isPresent()) {
            answers.wrong("targetReturn", "shop.error.return");
        }
        return share.orElse(Percent.ZERO);
    }

    private String page(Model model, AimsForm form) {
        model.addAttribute("form", form);
        model.addAttribute("kinds", KINDS);
        return "shop/aims";
    }

    private String typed(Amount amount) {
        return amount.isZero() ? "" : shop.currency().plain(amount);
    }

    private static String typed(@Nullable Percent percent) {
        return percent == null || percent.value().signum() == 0
                ? ""
                : percent.value().stripTrailingZeros().toPlainString();
    }
}
