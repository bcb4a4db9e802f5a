package patinary.taxyear;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.homeuse.HomeUses;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Notice;

/** How much of her home was used for the shop in a year. It is on a line of the form and in no posting. */
@Controller
@RequestMapping("/year/{year:[0-9]{4}}/home")
class HomeUseController {

    private static final BigDecimal MOST_FEET = BigDecimal.valueOf(100_000);
    private static final int FEET_DECIMALS = 2;
    private static final int MONTHS = 12;
    private static final int NOTE = 2000;

    private final HomeUses homes;
    private final Years years;
    private final CurrentShop shop;

    HomeUseController(HomeUses homes, Years years, CurrentShop shop) {
        this.homes = homes;
        this.years = years;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable int year, Model model) {
        HomeForm form = new HomeForm();
        homes.said(year).ifPresent(said -> {
            form.version = said.version();
            form.feet = said.squareFeet().stripTrailingZeros().toPlainString();
            form.months = String.valueOf(said.months());
            form.note = said.note();
        });
        return page(year, form, model);
    }

    @PostMapping
    String keep(
            @PathVariable int year,
            @ModelAttribute("form") HomeForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        HomeUses.Said said = new HomeUses.Said(
                year, feet(form, answers), months(form, answers), answers.note("note", form.note, NOTE), form.version);
        if (answers.anyWrong()) {
            response.setStatus(422);
            return page(year, form, model);
        }
        homes.keep(said);
        Notice.next(redirect, "taxyear.home.saved");
        return "redirect:/year/" + year + "/home";
    }

    @PostMapping("/remove")
    String remove(@PathVariable int year, RedirectAttributes redirect) {
        YearController.require(year);
        homes.remove(year);
        Notice.next(redirect, "taxyear.home.removed");
        return "redirect:/year/" + year;
    }

    private static BigDecimal feet(HomeForm form, Answers answers) {
        Optional<BigDecimal> typed =
                answers.decimal("feet", form.feet, "taxyear.error.feet").map(BigDecimal::stripTrailingZeros);
        boolean right = typed.filter(
                        feet -> feet.signum() > 0 && feet.compareTo(MOST_FEET) <= 0 && feet.scale() <= FEET_DECIMALS)
                .isPresent();
        if (!right && (typed.isPresent() || form.feet.isBlank())) {
            answers.wrong("feet", "taxyear.error.feet");
        }
        return typed.orElse(BigDecimal.ONE);
    }

    private static int months(HomeForm form, Answers answers) {
        Optional<Integer> typed = answers.whole("months", form.months);
        boolean right = typed.filter(months -> months >= 1 && months <= MONTHS).isPresent();
        if (!right && (typed.isPresent() || form.months.isBlank())) {
            answers.wrong("months", "taxyear.error.months");
        }
        return typed.orElse(1);
    }

    private String page(int year, HomeForm form, Model model) {
        YearController.require(year);
        model.addAttribute("form", form);
        model.addAttribute("year", year);
        model.addAttribute("rate", homes.rate(year).orElse(null));
        model.addAttribute("use", homes.of(year).orElse(null));
        model.addAttribute(
                "tentative",
                years.page(year).parts().stream()
                        .flatMap(part -> part.lines().stream())
                        .filter(row -> row.line().meaning().equals("tentative_profit"))
                        .map(YearPage.Line::amount)
                        .findFirst()
                        .orElse(Amount.ZERO));
        return "taxyear/home";
    }
}
