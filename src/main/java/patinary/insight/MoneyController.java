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
    private final Traits traits;
    private final PieceNames names;
    private final CurrentShop shop;

    MoneyController(MoneyReport report, Traits traits, PieceNames names, CurrentShop shop) {
        this.report = report;
        this.traits = traits;
        this.names = names;
        this.shop = shop;
    }

    /**
     * @param row the number of the row that is opened; the whole shop's where there is no such row
     * @param share the number of the row of shared profit whose pieces are shown, on the page {@code shares} of them
     */
    @GetMapping("/moves/money")
    String page(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row,
            @RequestParam(required = false) @Nullable Integer share,
            @RequestParam(required = false) @Nullable Integer shares,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        MoneyBy known = known(by);
        Period period = asked.period(shop.today());
        Narrowing narrowing = traits.narrowing(asked);
        MoneyReport.Answer answer = report.answer(known, period.first(), period.last(), narrowing);
        MoneyRow shown = shown(answer.table(), row);
        model.addAttribute("by", known.word());
        model.addAttribute("bys", choices());
        model.addAttribute("ofPieces", known.ofPieces());
        model.addAttribute("period", period);
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("table", answer.table());
        model.addAttribute("bands", answer.bands());
        model.addAttribute("lines", answer.lines());
        model.addAttribute("row", row);
        LineShares.Row shared = shared(answer.lines(), share);
        if (shared != null) {
            model.addAttribute("share", share);
            model.addAttribute("shared", shared);
            model.addAttribute("shares", names.page(shared.shares(), LineShares.Share::piece, Window.of(shares)));
        }
        model.addAttribute("shown", shown);
        model.addAttribute("steps", MoneyPictures.fall(shown.parts()));
        model.addAttribute("months", MoneyPictures.months(shown.sales(), period.first(), period.last()));
        model.addAttribute("ages", shown.stock() == null ? List.of() : MoneyPictures.ages(shown.stock()));
        model.addAttribute("pieces", names.page(MoneyPieces.of(shown), MoneyPieces.Line::piece, Window.of(page)));
        return "insight/money";
    }

    @GetMapping("/moves/money.csv")
    ResponseEntity<byte[]> csv(Asked asked, @RequestParam(defaultValue = "style") String by) {
        MoneyBy known = known(by);
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
        answer(asked, known).table().rows().forEach(row -> write(file, row));
        return file.download("money-by-" + known.word() + ".csv");
    }

    /** The pictures of the opened row as one file: its steps from price to profit, its months, the age of its stock. */
    @GetMapping("/moves/money/opened.csv")
    ResponseEntity<byte[]> opened(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row) {
        Period period = asked.period(shop.today());
        MoneyRow shown = shown(answer(asked, known(by)).table(), row);
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
    ResponseEntity<byte[]> lines(Asked asked) {
        CsvFile file =
                new CsvFile(shop.currency(), "part", "supply_line", "pieces_sold", "supplies_cost", "profit_share");
        LineShares lines = answer(asked, MoneyBy.LINE).lines();
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

    /** The pieces of the opened row. */
    @GetMapping("/moves/money/pieces.csv")
    ResponseEntity<byte[]> pieces(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "code",
                "title",
                "sold",
                "came_back",
                "landed_cost",
                "profit",
                "tied_up",
                "days_since_found");
        names.named(MoneyPieces.of(shown(answer(asked, known(by)).table(), row)), MoneyPieces.Line::piece)
                .forEach(one -> file.row(
                        one.piece().code(),
                        one.piece().title(),
                        one.row().sold(),
                        one.row().cameBack(),
                        one.row().cost(),
                        one.row().profit(),
                        one.row().tied(),
                        one.row().days()));
        return file.download("money-pieces.csv");
    }

    /** The pieces that give a share of their profit to one supply line. */
    @GetMapping("/moves/money/shares.csv")
    ResponseEntity<byte[]> shares(Asked asked, @RequestParam(required = false) @Nullable Integer share) {
        LineShares.Row shared = shared(answer(asked, MoneyBy.LINE).lines(), share);
        if (shared == null) {
            throw new NotFound("share " + share);
        }
        CsvFile file = new CsvFile(shop.currency(), "code", "title", "sold", "supplies_cost", "profit_share");
        names.named(shared.shares(), LineShares.Share::piece)
                .forEach(one -> file.row(
                        one.piece().code(),
                        one.piece().title(),
                        one.row().sold(),
                        one.row().supplies(),
                        one.row().profit()));
        return file.download("profit-shared-pieces.csv");
    }

    private static LineShares.@Nullable Row shared(@Nullable LineShares lines, @Nullable Integer share) {
        return lines == null
                        || share == null
                        || share < 0
                        || share >= lines.rows().size()
                ? null
                : lines.rows().get(share);
    }

    private MoneyReport.Answer answer(Asked asked, MoneyBy by) {
        Period period = asked.period(shop.today());
        return report.answer(by, period.first(), period.last(), traits.narrowing(asked));
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
