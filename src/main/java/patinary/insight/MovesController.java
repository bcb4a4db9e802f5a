package patinary.insight;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
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

/** The page that says which styles, kinds, supply lines and channels are worth doing again. */
@Controller
class MovesController {

    private final Moves moves;
    private final Traits traits;
    private final PieceNames names;
    private final CurrentShop shop;

    MovesController(Moves moves, Traits traits, PieceNames names, CurrentShop shop) {
        this.moves = moves;
        this.traits = traits;
        this.names = names;
        this.shop = shop;
    }

    /**
     * @param row the number of the row that is opened; the whole shop's where there is no such row
     * @param what the figure whose pieces are shown
     */
    @GetMapping("/moves")
    String page(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row,
            @RequestParam(defaultValue = "sales") String what,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        By known = known(by);
        Behind.What opened = what(what);
        Period period = asked.period(shop.today());
        Narrowing narrowing = traits.narrowing(asked);
        MoveTable table = moves.table(known, period.first(), period.last(), narrowing);
        MoveRow shown = shown(table, row);
        model.addAttribute("by", known.word());
        model.addAttribute("additive", known.additive());
        model.addAttribute("bys", choices());
        model.addAttribute("period", period);
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("bands", known == By.PRICE ? moves.bands() : null);
        model.addAttribute("table", table);
        model.addAttribute("row", row);
        model.addAttribute("what", opened.word());
        model.addAttribute("shown", shown);
        model.addAttribute("pieces", names.page(shown.behind().lines(opened), Behind.Line::piece, Window.of(page)));
        return "insight/moves";
    }

    @GetMapping("/moves.csv")
    ResponseEntity<byte[]> csv(Asked asked, @RequestParam(defaultValue = "style") String by) {
        By known = known(by);
        CsvFile file = new CsvFile(
                shop.currency(),
                known.word(),
                "found",
                "on_offer",
                "sold",
                "waiting",
                "median_days",
                "days_known",
                "sell_through_percent",
                "sell_through_drawn_percent",
                "drawn_low",
                "drawn_high",
                "landed_cost",
                "net_sales",
                "profit",
                "margin_percent");
        for (MoveRow row : table(asked, known).rows()) {
            file.row(
                    row.name(),
                    row.found(),
                    row.onOffer(),
                    row.sold(),
                    row.waiting(),
                    row.medianDays(),
                    row.daysKnown(),
                    value(row.sellThrough()),
                    row.drawn() == null ? null : row.drawn().percent().value(),
                    row.drawn() == null ? null : row.drawn().lowPercent().value(),
                    row.drawn() == null ? null : row.drawn().highPercent().value(),
                    row.cost(),
                    row.net(),
                    row.profit(),
                    value(row.margin()));
        }
        return file.download("what-moves-by-" + known.word() + ".csv");
    }

    /** The pieces behind one figure. */
    @GetMapping("/moves/opened.csv")
    ResponseEntity<byte[]> opened(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row,
            @RequestParam(defaultValue = "sales") String what) {
        Behind.What opened = what(what);
        CsvFile file = new CsvFile(
                shop.currency(),
                "code",
                "title",
                "found",
                "sold",
                "came_back",
                "days_to_sell",
                "landed_cost",
                "net_sales",
                "profit");
        MoveRow shown = shown(table(asked, known(by)), row);
        names.named(shown.behind().lines(opened), Behind.Line::piece)
                .forEach(one -> file.row(
                        one.piece().code(),
                        one.piece().title(),
                        one.row().found(),
                        one.row().sold(),
                        one.row().cameBack(),
                        one.row().days(),
                        one.row().cost(),
                        one.row().net(),
                        one.row().profit()));
        return file.download("what-moves-" + opened.word() + ".csv");
    }

    private MoveTable table(Asked asked, By by) {
        Period period = asked.period(shop.today());
        return moves.table(by, period.first(), period.last(), traits.narrowing(asked));
    }

    private static MoveRow shown(MoveTable table, @Nullable Integer row) {
        return row == null || row < 0 || row >= table.rows().size()
                ? table.whole()
                : table.rows().get(row);
    }

    private static By known(String word) {
        return By.of(word).orElseThrow(() -> new NotFound("group " + word));
    }

    private static Behind.What what(String word) {
        return Behind.What.of(word).orElseThrow(() -> new NotFound("figure " + word));
    }

    private static List<Choice> choices() {
        return Arrays.stream(By.values())
                .map(by -> Choice.said(by.word(), "insight.by." + by.word()))
                .toList();
    }

    private static @Nullable BigDecimal value(@Nullable Percent percent) {
        return percent == null ? null : percent.value();
    }
}
