package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.survival.Limits;
import patinary.survival.Span;
import patinary.survival.SurvivalCurve;
import patinary.web.CsvFile;
import patinary.web.NotFound;
import patinary.web.Window;

/** The page that says how long pieces take to sell, with those that still wait counted. */
@Controller
class SpeedController {

    private static final int SHORTEST = 90;
    private static final int LONGEST = 730;

    private final Speeds speeds;
    private final Traits traits;
    private final PieceNames names;
    private final CurrentShop shop;

    SpeedController(Speeds speeds, Traits traits, PieceNames names, CurrentShop shop) {
        this.speeds = speeds;
        this.traits = traits;
        this.names = names;
        this.shop = shop;
    }

    @GetMapping("/moves/days")
    String page(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        SpeedBy known = known(by);
        Narrowing narrowing = traits.narrowing(asked);
        Speeds.Answer answer = speeds.answer(known, narrowing, shop.today());
        Speed shown = shown(answer.table(), row);
        int days = lastDay(answer.table().whole().curve());
        model.addAttribute("by", known.word());
        model.addAttribute("bys", SpeedBy.choices());
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("row", row);
        model.addAttribute("table", answer.table());
        model.addAttribute("bands", answer.bands());
        model.addAttribute("marks", SpeedBy.MARKS);
        model.addAttribute("fewest", SpeedTable.FEWEST);
        model.addAttribute("shown", shown);
        model.addAttribute("days", days);
        model.addAttribute("limits", Limits.LOG_LOG);
        model.addAttribute("picture", CurvePicture.of(shown.curve(), days));
        model.addAttribute("beside", CurvePicture.of(answer.table().whole().curve(), days));
        model.addAttribute("pieces", names.page(Speeds.inOrder(shown.rounds()), Round::piece, Window.of(page)));
        return "insight/speed";
    }

    @GetMapping("/moves/days.csv")
    ResponseEntity<byte[]> csv(Asked asked, @RequestParam(defaultValue = "style") String by) {
        SpeedBy known = known(by);
        CsvFile file = new CsvFile(
                shop.currency(),
                known.word(),
                "rounds",
                "pieces",
                "sold",
                "withdrawn",
                "on_offer",
                "half_sold_after_days",
                "half_low",
                "half_high",
                "sold_within_30_days_percent",
                "sold_within_60_days_percent",
                "sold_within_90_days_percent",
                "sold_within_180_days_percent",
                "beside_the_rest",
                "mean_days_of_first_180",
                "mean_days_spread");
        for (Speed row : table(asked, known).rows()) {
            Speed.MeanDays mean = row.meanDays();
            file.row(
                    row.name(),
                    row.stays().size(),
                    row.pieces(),
                    row.sold(),
                    row.withdrawn(),
                    row.open(),
                    row.halfDays(),
                    row.halfLow(),
                    row.halfHigh(),
                    row.soldWithin(SpeedBy.MARKS.get(0)),
                    row.soldWithin(SpeedBy.MARKS.get(1)),
                    row.soldWithin(SpeedBy.MARKS.get(2)),
                    row.soldWithin(SpeedBy.MARKS.get(3)),
                    row.verdict(),
                    mean == null ? null : mean.days(),
                    mean == null ? null : mean.spread());
        }
        return file.download("days-to-sell-by-" + known.word() + ".csv");
    }

    /** The steps of the opened row's curve. */
    @GetMapping("/moves/days/curve.csv")
    ResponseEntity<byte[]> curve(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row) {
        CsvFile file = new CsvFile(shop.currency(), "day", "at_risk", "sold", "unsold", "low", "high");
        for (SurvivalCurve.Step step :
                shown(table(asked, known(by)), row).curve().steps()) {
            if (step.sold() > 0) {
                Span limits = step.limits(Limits.LOG_LOG);
                file.row(
                        step.day(),
                        step.atRisk(),
                        step.sold(),
                        share(step.unsold()),
                        share(limits.low()),
                        share(limits.high()));
            }
        }
        return file.download("share-unsold.csv");
    }

    /** The pieces of the opened row. */
    @GetMapping("/moves/days/pieces.csv")
    ResponseEntity<byte[]> pieces(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row) {
        return RoundFile.of(shown(table(asked, known(by)), row).rounds(), names, shop, "days-to-sell-pieces.csv");
    }

    private SpeedTable table(Asked asked, SpeedBy by) {
        return speeds.answer(by, traits.narrowing(asked), shop.today()).table();
    }

    /** To four decimals; nothing before the first sale, when no limits are known. */
    static @Nullable BigDecimal share(double share) {
        return Double.isNaN(share) ? null : BigDecimal.valueOf(share).setScale(4, RoundingMode.HALF_UP);
    }

    /** The row asked for, or the whole shop. */
    private static Speed shown(SpeedTable table, @Nullable Integer row) {
        return row == null || row < 0 || row >= table.rows().size()
                ? table.whole()
                : table.rows().get(row);
    }

    private static int lastDay(SurvivalCurve curve) {
        int last =
                curve.steps().stream().mapToInt(SurvivalCurve.Step::day).max().orElse(0);
        return Math.min(LONGEST, Math.max(SHORTEST, last));
    }

    private static SpeedBy known(String word) {
        return SpeedBy.of(word).orElseThrow(() -> new NotFound("group " + word));
    }
}
