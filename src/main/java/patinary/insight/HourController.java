package patinary.insight;

import java.util.List;
import java.util.Objects;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;

/** What her hour really earned. */
@Controller
class HourController {

    /** A month with the bar of what it truly left. */
    record Drawn(HourTable.Month month, Bar bar) {}

    private final HourReport report;
    private final HourYears years;
    private final CurrentShop shop;

    HourController(HourReport report, HourYears years, CurrentShop shop) {
        this.report = report;
        this.years = years;
        this.shop = shop;
    }

    @GetMapping("/moves/hours")
    String page(@RequestParam(defaultValue = "") String from, @RequestParam(defaultValue = "") String to, Model model) {
        Period period = Period.asked(from, to, shop.today());
        HourTable table = report.table(period);
        Bar.Scale scale =
                Bar.Scale.of(table.months().stream().map(HourTable.Month::truly).toList());
        List<Drawn> months = table.months().stream()
                .map(month -> new Drawn(month, scale.bar(Amount.ZERO, month.truly())))
                .toList();
        model.addAttribute("period", period);
        model.addAttribute("months", months);
        model.addAttribute("whole", table.whole());
        model.addAttribute("rate", shop.hourlyRate());
        return "insight/hours";
    }

    @GetMapping("/moves/hours.csv")
    ResponseEntity<byte[]> csv(
            @RequestParam(defaultValue = "") String from, @RequestParam(defaultValue = "") String to) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "month",
                "profit_by_the_books",
                "bench_minutes",
                "profit_of_an_hour",
                "true_profit",
                "sold",
                "reached_the_aim",
                "profit_of_pieces_sold",
                "minutes_on_them",
                "profit_of_an_hour_on_them");
        for (HourTable.Month month :
                report.table(Period.asked(from, to, shop.today())).months()) {
            file.row(
                    Objects.toString(month.month()),
                    month.profit(),
                    month.minutes(),
                    month.perHour(),
                    month.truly(),
                    month.sold(),
                    month.reached(),
                    month.soldProfit(),
                    month.soldMinutes(),
                    month.perSoldHour());
        }
        return file.download("what-an-hour-earned.csv");
    }

    /** @param year the tax year; the running one where it is left out, or is none of the books' */
    @GetMapping("/moves/hours/tax")
    String tax(@RequestParam(defaultValue = "") String year, Model model) {
        HourYears.Year asked = asked(year);
        model.addAttribute("years", years.years());
        model.addAttribute("one", asked);
        model.addAttribute("runs", asked.runs(shop.today()));
        model.addAttribute("rate", shop.hourlyRate());
        return "insight/hours-tax";
    }

    @GetMapping("/moves/hours/tax.csv")
    ResponseEntity<byte[]> taxFile(@RequestParam(defaultValue = "") String year) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "tax_year_from",
                "tax_year_to",
                "profit_as_counted_for_tax",
                "difference",
                "profit_by_the_books",
                "bench_minutes",
                "true_profit");
        HourYears.Year one = asked(year);
        file.row(one.first(), one.last(), one.taxed(), one.adjustment(), one.books(), one.minutes(), one.truly());
        return file.download("tax-profit-and-true-profit.csv");
    }

    private HourYears.Year asked(String year) {
        List<Integer> all = years.years();
        return years.of(all.stream()
                .filter(one -> String.valueOf(one).equals(year))
                .findFirst()
                .orElse(all.get(0)));
    }
}
