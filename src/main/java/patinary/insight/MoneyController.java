package patinary.insight;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
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
        MoneyBy known = MoneyBy.of(by);
        Period period = asked.period(shop.today());
        Narrowing narrowing = traits.narrowing(asked);
        MoneyReport.Answer answer = report.answer(known, period.first(), period.last(), narrowing);
        MoneyRow shown = answer.table().row(row);
        model.addAttribute("by", known.word());
        model.addAttribute("bys", choices());
        model.addAttribute("ofPieces", known.ofPieces());
        model.addAttribute("period", period);
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("table", answer.table());
        model.addAttribute("bands", answer.bands());
        model.addAttribute("lines", answer.lines());
        model.addAttribute("row", row);
        LineShares.Row shared = answer.lines() == null ? null : answer.lines().row(share);
        if (shared != null) {
            model.addAttribute("share", share);
            model.addAttribute("shared", shared);
            model.addAttribute("shares", names.page(shared.shares(), LineShares.Share::piece, Window.of(shares)));
        }
        model.addAttribute("beforeAfter", BeforeAfter.of(answer.table()));
        model.addAttribute("shown", shown);
        model.addAttribute("steps", MoneyPictures.fall(shown.parts()));
        model.addAttribute("months", MoneyPictures.months(shown.sales(), period.first(), period.last()));
        model.addAttribute("ages", MoneyPictures.ages(shown));
        model.addAttribute(
                "pieces",
                names.page(MoneyPieces.of(shown, report.minutes(period)), MoneyPieces.Line::piece, Window.of(page)));
        return "insight/money";
    }

    private static List<Choice> choices() {
        return Arrays.stream(MoneyBy.values())
                .map(by -> Choice.said(by.word(), "insight.money.by." + by.word()))
                .toList();
    }
}
