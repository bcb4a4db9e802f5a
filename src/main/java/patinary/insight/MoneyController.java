package patinary.insight;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
import patinary.web.CsvFile;
import patinary.web.NotFound;
import patinary.web.Window;

/** The page of the money of each group: what it earned, for what cost, hours and money tied up. */
@Controller
class MoneyController {

    private final MoneyReport report;
    private final MoneyPieces pieces;
    private final CurrentShop shop;

    MoneyController(MoneyReport report, MoneyPieces pieces, CurrentShop shop) {
        this.report = report;
        this.pieces = pieces;
        this.shop = shop;
    }

    /** @param row the number of the row that is opened; the whole shop's where there is no such row */
    @GetMapping("/moves/money")
    String page(
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(required = false) @Nullable Integer row,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        MoneyBy known = known(by);
        Period period = Period.asked(from, to, shop.today());
        MoneyReport.Answer answer = report.answer(known, period.first(), period.last());
        MoneyRow shown = shown(answer.table(), row);
        model.addAttribute("by", known.word());
        model.addAttribute("bys", choices());
        model.addAttribute("ofPieces", known.ofPieces());
        model.addAttribute("from", period.first());
        model.addAttribute("to", period.last());
        model.addAttribute("table", answer.table());
        model.addAttribute("bands", answer.bands());
        model.addAttribute("lines", answer.lines());
        model.addAttribute("row", row);
        model.addAttribute("shown", shown);
        model.addAttribute("steps", MoneyPictures.fall(shown.parts()));
        model.addAttribute("months", MoneyPictures.months(shown.sales(), period.first(), period.last()));
        model.addAttribute("ages", shown.stock() == null ? List.of() : MoneyPictures.ages(shown.stock()));
        model.addAttribute("pieces", pieces.of(shown, Window.of(page)));
        return "insight/money";
    }

    @GetMapping("/moves/money.csv")
    ResponseEntity<byte[]> csv(
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to) {
        MoneyBy known = known(by);
        Period period = Period.asked(from, to, shop.today());
        CsvFile file = new CsvFile(
                shop.currency(),
                known.word(),
                "sold",
                "net_sales",
                "landed_cost",
                "profit",
                "margin_percent",
                "return_on_cost_percent",
                "bench_minutes",
                "profit_per_bench_hour",
                "gross_return_on_stock_of_a_year",
                "stock_turns_of_a_year",
                "tied_up",
                "days_tied_up");
        report.answer(known, period.first(), period.last()).table().rows().forEach(row -> write(file, row));
        return file.download("money-by-" + known.word() + ".csv");
    }

    /** The pictures of the opened row as one file: its steps from price to profit, its months, the age of its stock. */
    @GetMapping("/moves/money/opened.csv")
    ResponseEntity<byte[]> opened(
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(required = false) @Nullable Integer row) {
        Period period = Period.asked(from, to, shop.today());
        MoneyRow shown =
                shown(report.answer(known(by), period.first(), period.last()).table(), row);
        CsvFile file = new CsvFile(shop.currency(), "part", "name", "pieces", "amount", "profit");
        MoneyPictures.fall(shown.parts()).forEach(step -> file.row("step", step.key(), null, step.amount(), null));
        MoneyPictures.months(shown.sales(), period.first(), period.last())
                .forEach(month -> file.row(
                        "net_sales_of_month", month.month().toString(), month.pieces(), month.net(), month.profit()));
        if (shown.stock() != null) {
            MoneyPictures.ages(shown.stock())
                    .forEach(age -> file.row(
                            "tied_up_by_days_since_found", "from " + age.from(), age.pieces(), age.tied(), null));
        }
        return file.download("money-opened.csv");
    }

    /** The profit of what was sold, shared over the supply lines on it. */
    @GetMapping("/moves/money/lines.csv")
    ResponseEntity<byte[]> lines(
            @RequestParam(defaultValue = "") String from, @RequestParam(defaultValue = "") String to) {
        Period period = Period.asked(from, to, shop.today());
        CsvFile file =
                new CsvFile(shop.currency(), "part", "supply_line", "pieces_sold", "supplies_cost", "profit_share");
        LineShares lines =
                report.answer(MoneyBy.LINE, period.first(), period.last()).lines();
        if (lines != null) {
            lines.rows()
                    .forEach(row -> file.row(
                            row.part().name().toLowerCase(Locale.ROOT),
                            row.name(),
                            row.pieces(),
                            row.supplies(),
                            row.profit()));
        }
        return file.download("profit-shared-by-supply-line.csv");
    }

    private static void write(CsvFile file, MoneyRow row) {
        file.row(
                row.name(),
                row.sold(),
                row.parts().net(),
                row.parts().cost(),
                row.profit(),
                value(row.margin()),
                value(row.returnOnCost()),
                row.minutes(),
                row.perHour(),
                row.grossReturn(),
                row.turn(),
                row.tied(),
                row.tiedDays());
    }

    private static MoneyRow shown(MoneyTable table, @Nullable Integer row) {
        return row == null || row < 0 || row >= table.rows().size()
                ? table.whole()
                : table.rows().get(row);
    }

    private static MoneyBy known(String word) {
        return MoneyBy.of(word).orElseThrow(() -> new NotFound("group " + word));
    }

    private static List<Choice> choices() {
        return Arrays.stream(MoneyBy.values())
                .map(by -> Choice.said(by.word(), "insight.money.by." + by.word()))
                .toList();
    }

    private static java.math.@Nullable BigDecimal value(@Nullable Percent percent) {
        return percent == null ? null : percent.value();
    }
}
