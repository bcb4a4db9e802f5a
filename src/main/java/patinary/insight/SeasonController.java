package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;

/** The page that says whether some months sell faster, as far as that can be told. */
@Controller
class SeasonController {

    /** Ratios are drawn as if they were amounts of hundredths. */
    private static final int HUNDRED = 100;

    /** A month with its bar from 1, the speed of the whole year. */
    record Drawn(Seasons.Month month, LocalDate day, Bar bar) {

        public @Nullable BigDecimal ratio() {
            return Ratios.twoDecimals(month.ratio());
        }

        public @Nullable BigDecimal low() {
            return Ratios.twoDecimals(month.low());
        }

        public @Nullable BigDecimal high() {
            return Ratios.twoDecimals(month.high());
        }

        public @Nullable BigDecimal drawn() {
            return Ratios.twoDecimals(month.drawn());
        }
    }

    private final Moves moves;
    private final Speeds speeds;
    private final CurrentShop shop;

    SeasonController(Moves moves, Speeds speeds, CurrentShop shop) {
        this.moves = moves;
        this.speeds = speeds;
        this.shop = shop;
    }

    @GetMapping("/moves/seasons")
    String page(Model model) {
        LocalDate today = shop.today();
        Seasons seasons = SeasonDays.of(moves.facts(), today);
        model.addAttribute("seasons", seasons);
        model.addAttribute("months", drawn(seasons, today.getYear()));
        model.addAttribute("cohorts", Cohort.of(speeds.rounds(today), today));
        model.addAttribute("cohortDays", Cohort.DAYS);
        model.addAttribute("fewest", Seasons.FEWEST_SALES);
        return "insight/seasons";
    }

    @GetMapping("/moves/seasons.csv")
    ResponseEntity<byte[]> csv() {
        CsvFile file = new CsvFile(
                shop.currency(), "month", "sales", "days_on_offer", "ratio", "low", "high", "ratio_drawn", "said");
        Seasons seasons = SeasonDays.of(moves.facts(), shop.today());
        for (Drawn one : drawn(seasons, shop.today().getYear())) {
            Seasons.Month month = one.month();
            file.row(
                    month.number(),
                    month.sales(),
                    month.days(),
                    one.ratio(),
                    one.low(),
                    one.high(),
                    one.drawn(),
                    month.words());
        }
        return file.download("months-of-the-year.csv");
    }

    private static List<Drawn> drawn(Seasons seasons, int year) {
        Bar.Scale scale = Bar.Scale.of(
                seasons.months().stream().map(SeasonController::hundredths).toList());
        return seasons.months().stream()
                .map(month -> new Drawn(
                        month, LocalDate.of(year, month.number(), 1), scale.bar(Amount.ZERO, hundredths(month))))
                .toList();
    }

    private static Amount hundredths(Seasons.Month month) {
        return Amount.of(Math.round(month.drawn() * HUNDRED));
    }
}
