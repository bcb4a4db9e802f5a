package patinary.insight;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;
import patinary.web.NotFound;

/** The tables of the page of the money as files. */
@Controller
class MoneyFileController {

    private final MoneyReport report;
    private final Traits traits;
    private final PieceNames names;
    private final CurrentShop shop;

    MoneyFileController(MoneyReport report, Traits traits, PieceNames names, CurrentShop shop) {
        this.report = report;
        this.traits = traits;
        this.names = names;
        this.shop = shop;
    }

    @GetMapping("/moves/money.csv")
    ResponseEntity<byte[]> csv(Asked asked, @RequestParam(defaultValue = "style") String by) {
        MoneyBy known = MoneyBy.of(by);
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

    /** What was put into what each group sold, before the work and by it, and what came back. */
    @GetMapping("/moves/money/before-after.csv")
    ResponseEntity<byte[]> beforeAfter(Asked asked, @RequestParam(defaultValue = "style") String by) {
        MoneyBy known = MoneyBy.of(by);
        CsvFile file = new CsvFile(
                shop.currency(),
                known.word(),
                "paid_before",
                "put_on_by_the_work",
                "landed_cost",
                "came_back",
                "profit");
        BeforeAfter.of(answer(asked, known).table())
                .rows()
                .forEach(row -> file.row(row.name(), row.paid(), row.work(), row.cost(), row.back(), row.profit()));
        return file.download("before-and-after-by-" + known.word() + ".csv");
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
                "net_sales",
                "landed_cost",
                "put_on_by_the_work",
                "profit",
                "bench_minutes",
                "tied_up",
                "days_since_found",
                "money_times_days_in_stock");
        Map<UUID, BigDecimal> minutes = report.minutes(asked.period(shop.today()));
        names.named(MoneyPieces.of(answer(asked, MoneyBy.of(by)).table().row(row), minutes), MoneyPieces.Line::piece)
                .forEach(one -> write(file, one.piece(), one.row()));
        return file.download("money-pieces.csv");
    }

    /** The pieces that give a share of their profit to one supply line. */
    @GetMapping("/moves/money/shares.csv")
    ResponseEntity<byte[]> shares(Asked asked, @RequestParam(required = false) @Nullable Integer share) {
        LineShares lines = answer(asked, MoneyBy.LINE).lines();
        LineShares.Row shared = lines == null ? null : lines.row(share);
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

    private MoneyReport.Answer answer(Asked asked, MoneyBy by) {
        Period period = asked.period(shop.today());
        return report.answer(by, period.first(), period.last(), traits.narrowing(asked));
    }

    private static void write(CsvFile file, PieceNames.Name piece, MoneyPieces.Line line) {
        SaleParts parts = line.parts();
        file.row(
                piece.code(),
                piece.title(),
                line.sold(),
                line.cameBack(),
                parts == null ? null : parts.net(),
                parts == null ? null : parts.cost(),
                line.work(),
                parts == null ? null : parts.profit(),
                line.minutes(),
                line.tied(),
                line.age(),
                line.lay());
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

    private static @Nullable BigDecimal value(@Nullable Percent percent) {
        return percent == null ? null : percent.value();
    }
}
