package patinary.insight;

import java.util.Arrays;
import java.util.List;
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

/** The page that says which styles, kinds, supply lines and channels are worth doing again. */
@Controller
class MovesController {

    private final Moves moves;
    private final CurrentShop shop;

    MovesController(Moves moves, CurrentShop shop) {
        this.moves = moves;
        this.shop = shop;
    }

    @GetMapping("/moves")
    String page(
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            Model model) {
        By known = known(by);
        Period period = Period.asked(from, to, shop.today());
        model.addAttribute("by", known.word());
        model.addAttribute("additive", known.additive());
        model.addAttribute("bys", choices());
        model.addAttribute("from", period.first());
        model.addAttribute("to", period.last());
        model.addAttribute("table", moves.table(known, period.first(), period.last()));
        return "insight/moves";
    }

    @GetMapping("/moves.csv")
    ResponseEntity<byte[]> csv(
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to) {
        By known = known(by);
        Period period = Period.asked(from, to, shop.today());
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
        for (MoveRow row : moves.table(known, period.first(), period.last()).rows()) {
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

    private static By known(String word) {
        return By.of(word).orElseThrow(() -> new NotFound("group " + word));
    }

    private static List<Choice> choices() {
        return Arrays.stream(By.values())
                .map(by -> Choice.said(by.word(), "insight.by." + by.word()))
                .toList();
    }

    private static java.math.@org.jspecify.annotations.Nullable BigDecimal value(
            @org.jspecify.annotations.Nullable Percent percent) {
        return percent == null ? null : percent.value();
    }
}
