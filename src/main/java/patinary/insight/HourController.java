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
    private final CurrentShop shop;

    HourController(HourReport report, CurrentShop shop) {
        this.report = report;
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
}
