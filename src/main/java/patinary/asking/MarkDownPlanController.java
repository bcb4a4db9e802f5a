package patinary.asking;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Notice;

/** Her plan of mark-downs. */
@Controller
@RequestMapping("/mark-downs/plan")
class MarkDownPlanController {

    private static final int LONGEST = 3650;
    private static final int ROOM = 4;

    private final MarkDownPlan plan;
    private final CurrentShop shop;

    MarkDownPlanController(MarkDownPlan plan, CurrentShop shop) {
        this.plan = plan;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        PlanForm form = new PlanForm();
        plan.steps().forEach(step -> {
            PlanForm.Row row = new PlanForm.Row();
            row.days = String.valueOf(step.afterDays());
            row.percent = step.percent().value().stripTrailingZeros().toPlainString();
            form.rows.add(row);
        });
        return page(form, model);
    }

    @PostMapping
    String keep(
            @ModelAttribute("form") PlanForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        List<MarkDown.Step> steps = read(form, new Answers(errors, shop.currency()));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, model);
        }
        plan.keep(steps);
        Notice.next(redirect, "asking.plan.saved");
        return "redirect:/mark-downs";
    }

    private static List<MarkDown.Step> read(PlanForm form, Answers answers) {
        List<MarkDown.Step> steps = new ArrayList<>();
        Set<Integer> days = new HashSet<>();
        for (int i = 0; i < form.rows.size(); i++) {
            PlanForm.Row row = form.rows.get(i);
            if (!row.isEmpty()) {
                String at = "rows[" + i + "].";
                int after = answers.whole(at + "days", row.days).orElse(0);
                if (after < 1 || after > LONGEST || !days.add(after)) {
                    answers.wrong(at + "days", "asking.error.days");
                }
                Percent percent = answers.percent(at + "percent", row.percent).orElse(Percent.ZERO);
                if (percent.value().signum() <= 0 || percent.value().compareTo(BigDecimal.valueOf(100)) >= 0) {
                    answers.wrong(at + "percent", "asking.error.percent");
                }
                steps.add(new MarkDown.Step(after, percent));
            }
        }
        return steps;
    }

    private String page(PlanForm form, Model model) {
        while (form.rows.size() < ROOM || !form.rows.get(form.rows.size() - 1).isEmpty()) {
            form.rows.add(new PlanForm.Row());
        }
        model.addAttribute("form", form);
        return "asking/plan";
    }
}
