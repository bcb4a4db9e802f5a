package patinary.buying;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.Notice;

/** The page of her own percentages. */
@Controller
@RequestMapping("/buy/percents")
class QuickPercentController {

    private static final int NAME = 60;
    private static final String HERE = "redirect:/buy/percents";

    private final QuickPercents percents;
    private final CurrentShop shop;

    QuickPercentController(QuickPercents percents, CurrentShop shop) {
        this.percents = percents;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("form", new QuickPercentForm());
        return page(model);
    }

    @PostMapping
    String add(
            @ModelAttribute("form") QuickPercentForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Percent percent = read(form, errors);
        if (errors.hasErrors() || percent == null) {
            response.setStatus(422);
            return page(model);
        }
        percents.add(form.name, percent);
        Notice.next(redirect, "buying.percents.added", form.name);
        return HERE;
    }

    @PostMapping(Ids.PATH + "/{way:earlier|later}")
    String move(@PathVariable UUID id, @PathVariable String way) {
        percents.move(id, way.equals("earlier") ? -1 : 1);
        return HERE;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        percents.remove(id);
        Notice.next(redirect, "buying.percents.removed");
        return HERE;
    }

    private @Nullable Percent read(QuickPercentForm form, BindingResult errors) {
        Answers answers = new Answers(errors, shop.currency());
        List<QuickPercents.Row> rows = percents.rows();
        String name = answers.text("name", form.name, NAME, "buying.error.percent-name");
        if (rows.stream().anyMatch(row -> row.name().equalsIgnoreCase(name))) {
            answers.wrong("name", "buying.error.percent-name-taken");
        }
        if (rows.size() >= QuickPercents.MOST) {
            answers.wrong("", "buying.error.percents-full", QuickPercents.MOST);
        }
        Percent percent = AmountOrPercent.readPercent(answers, "percent", form.percent);
        if (!errors.hasFieldErrors("percent")
                && (percent == null || percent.value().signum() == 0)) {
            answers.wrong("percent", "buying.error.percent-missing");
        }
        return percent;
    }

    private String page(Model model) {
        model.addAttribute("percents", percents.rows());
        return "buying/percents";
    }
}
