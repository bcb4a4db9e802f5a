package patinary.insight;

import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.survival.Incidence;
import patinary.survival.Limits;
import patinary.survival.Span;
import patinary.web.CsvFile;
import patinary.web.NotFound;
import patinary.web.Window;

/** Days to sell by channel: where what was offered sold, and by when. */
@Controller
class SoldWhereController {

    private final Speeds speeds;
    private final Traits traits;
    private final PieceNames names;
    private final CurrentShop shop;

    SoldWhereController(Speeds speeds, Traits traits, PieceNames names, CurrentShop shop) {
        this.speeds = speeds;
        this.traits = traits;
        this.names = names;
        this.shop = shop;
    }

    /** @param row the number of the channel whose pieces are shown; those of all where there is no such row */
    @GetMapping(path = "/moves/days", params = "by=" + SpeedBy.CHANNEL)
    String page(
            Asked asked,
            @RequestParam(required = false) @Nullable Integer row,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        Narrowing narrowing = traits.narrowing(asked);
        SoldWhere where = speeds.where(narrowing, shop.today());
        model.addAttribute("by", SpeedBy.CHANNEL);
        model.addAttribute("bys", SpeedBy.choices());
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("row", row);
        model.addAttribute("where", where);
        model.addAttribute("opened", where.row(row));
        model.addAttribute("limits", Limits.LOG_LOG);
        model.addAttribute("marks", SpeedBy.MARKS);
        model.addAttribute("pieces", names.page(Speeds.inOrder(where.rounds(row)), Round::piece, Window.of(page)));
        return "insight/sold-where";
    }

    @GetMapping(path = "/moves/days.csv", params = "by=" + SpeedBy.CHANNEL)
    ResponseEntity<byte[]> csv(Asked asked) {
        SoldWhere where = speeds.where(traits.narrowing(asked), shop.today());
        CsvFile file = new CsvFile(
                shop.currency(),
                "end",
                "channel",
                "rounds",
                "within_30_days_percent",
                "within_60_days_percent",
                "within_90_days_percent",
                "within_180_days_percent");
        where.rows().forEach(row -> write(file, "sold", where, row));
        write(file, "taken_down", where, where.takenDown());
        return file.download("where-sold.csv");
    }

    /** The days on which something ended as the opened row says. */
    @GetMapping(path = "/moves/days/curve.csv", params = "by=" + SpeedBy.CHANNEL)
    ResponseEntity<byte[]> steps(Asked asked, @RequestParam(required = false) @Nullable Integer row) {
        SoldWhere.Row opened =
                speeds.where(traits.narrowing(asked), shop.today()).row(row);
        if (opened == null) {
            throw new NotFound("row " + row);
        }
        CsvFile file = new CsvFile(
                shop.currency(), "day", "at_risk", "ended_so", "share_still_on_offer", "share_ended_so", "low", "high");
        for (Incidence.Step step : opened.steps()) {
            Span limits = step.soldLimits(Limits.LOG_LOG);
            file.row(
                    step.day(),
                    step.atRisk(),
                    step.soldCount(),
                    SpeedController.share(step.stillOn()),
                    SpeedController.share(step.sold()),
                    SpeedController.share(limits.low()),
                    SpeedController.share(limits.high()));
        }
        return file.download("share-by-end.csv");
    }

    /** The pieces of the opened row. */
    @GetMapping(path = "/moves/days/pieces.csv", params = "by=" + SpeedBy.CHANNEL)
    ResponseEntity<byte[]> pieces(Asked asked, @RequestParam(required = false) @Nullable Integer row) {
        return RoundFile.of(
                speeds.where(traits.narrowing(asked), shop.today()).rounds(row), names, shop, "where-sold-pieces.csv");
    }

    private static void write(CsvFile file, String end, SoldWhere where, SoldWhere.Row row) {
        file.row(
                end,
                row.name(),
                row.ended(),
                where.within(row, SpeedBy.MARKS.get(0)),
                where.within(row, SpeedBy.MARKS.get(1)),
                where.within(row, SpeedBy.MARKS.get(2)),
                where.within(row, SpeedBy.MARKS.get(3)));
    }
}
