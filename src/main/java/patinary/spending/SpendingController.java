package patinary.spending;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.web.Choice;
import patinary.web.Window;

/** The one list of money documents that belong to no piece. */
@Controller
class SpendingController {

    static final List<String> KINDS =
            List.of("expenses", "trips", "other-income", "owner-money", "money-moves", "sales-tax-paid", "till-counts");

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 9999;

    private final MoneyReports reports;
    private final MoneyDesk desk;

    SpendingController(MoneyReports reports, MoneyDesk desk) {
        this.reports = reports;
        this.desk = desk;
    }

    @GetMapping("/expenses")
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "") String category,
            @RequestParam(required = false) @Nullable Integer year,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        Integer within = year == null || year < FIRST_YEAR || year > LAST_YEAR ? null : year;
        MoneyReports.Wanted wanted = new MoneyReports.Wanted(q.strip(), kind, category, within);
        model.addAttribute("wanted", wanted);
        model.addAttribute("year", within == null ? "" : within.toString());
        model.addAttribute("rows", reports.rows(wanted, Window.of(page)));
        model.addAttribute("totals", reports.totals(wanted));
        model.addAttribute("balances", reports.balances());
        model.addAttribute("names", desk.categories);
        model.addAttribute("kinds", kinds());
        model.addAttribute("categories", desk.categories.choices());
        model.addAttribute(
                "years",
                reports.years().stream()
                        .map(known -> Choice.named(known.toString(), known.toString()))
                        .toList());
        return "spending/list";
    }

    private static List<Choice> kinds() {
        return KINDS.stream()
                .map(kind -> Choice.said(kind, "spending.kind." + kind))
                .toList();
    }
}
