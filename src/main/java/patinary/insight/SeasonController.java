package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;
import patinary.web.NotFound;
import patinary.web.Window;

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

    private final SeasonReport report;
    private final Traits traits;
    private final PieceNames names;
    private final CurrentShop shop;

    SeasonController(SeasonReport report, Traits traits, PieceNames names, CurrentShop shop) {
        this.report = report;
        this.traits = traits;
        this.names = names;
        this.shop = shop;
    }

    /**
     * @param month the number of the month that is opened
     * @param first the month of first offers that is opened, as 2025-03; neither where there is no such month
     */
    @GetMapping("/moves/seasons")
    String page(
            Asked asked,
            @RequestParam(defaultValue = "") String month,
            @RequestParam(defaultValue = "") String first,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        LocalDate today = shop.today();
        Narrowing narrowing = traits.narrowing(asked);
        SeasonReport.Answer answer = report.answer(narrowing, today);
        Seasons seasons = answer.seasons();
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("seasons", seasons);
        model.addAttribute("months", drawn(seasons, today.getYear()));
        model.addAttribute("cohorts", answer.cohorts());
        model.addAttribute("cohortDays", Cohort.DAYS);
        model.addAttribute("fewest", Seasons.FEWEST_SALES);
        model.addAttribute("month", month);
        model.addAttribute("first", first);
        opened(answer.days(), month).ifPresent(one -> {
            model.addAttribute("openedMonth", LocalDate.of(today.getYear(), Integer.parseInt(month), 1));
            model.addAttribute("pieces", names.page(one.lines(), SeasonDays.Month.Line::piece, Window.of(page)));
        });
        opened(answer.cohorts(), first).ifPresent(one -> {
            model.addAttribute("openedCohort", one.first());
            model.addAttribute("rounds", names.page(Speeds.inOrder(one.rounds()), Round::piece, Window.of(page)));
        });
        return "insight/seasons";
    }

    @GetMapping("/moves/seasons.csv")
    ResponseEntity<byte[]> csv(Asked asked) {
        CsvFile file = new CsvFile(
                shop.currency(), "month", "sales", "days_on_offer", "ratio", "low", "high", "ratio_drawn", "said");
        Seasons seasons = answer(asked).seasons();
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

    /** What was first offered in each month, and how much of it sold. */
    @GetMapping("/moves/seasons/cohorts.csv")
    ResponseEntity<byte[]> cohorts(Asked asked) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "first_offered",
                "pieces",
                "sold_within_" + Cohort.DAYS + "_days_percent",
                "low",
                "high",
                "too_young");
        for (Cohort cohort : answer(asked).cohorts()) {
            file.row(
                    cohort.month().toString(),
                    cohort.offered(),
                    value(cohort.sold()),
                    value(cohort.low()),
                    value(cohort.high()),
                    cohort.young());
        }
        return file.download("sold-by-month-of-first-offer.csv");
    }

    /** The pieces behind one month of the year. */
    @GetMapping("/moves/seasons/opened.csv")
    ResponseEntity<byte[]> opened(Asked asked, @RequestParam(defaultValue = "") String month) {
        CsvFile file = new CsvFile(shop.currency(), "code", "title", "days_on_offer", "sold");
        SeasonDays.Month opened = opened(answer(asked).days(), month).orElseThrow(() -> new NotFound("month " + month));
        names.named(opened.lines(), SeasonDays.Month.Line::piece)
                .forEach(one -> file.row(
                        one.piece().code(),
                        one.piece().title(),
                        one.row().days(),
                        one.row().sold()));
        return file.download("month-of-the-year.csv");
    }

    /** The pieces first offered in one month. */
    @GetMapping("/moves/seasons/first-offered.csv")
    ResponseEntity<byte[]> firstOffered(Asked asked, @RequestParam(defaultValue = "") String first) {
        Cohort opened = opened(answer(asked).cohorts(), first).orElseThrow(() -> new NotFound("month " + first));
        return RoundFile.of(opened.rounds(), names, shop, "first-offered-" + opened.month() + ".csv");
    }

    private SeasonReport.Answer answer(Asked asked) {
        return report.answer(traits.narrowing(asked), shop.today());
    }

    private static Optional<SeasonDays.Month> opened(SeasonDays days, String month) {
        return month.matches("[1-9]|1[0-2]") ? Optional.of(days.month(Integer.parseInt(month))) : Optional.empty();
    }

    private static Optional<Cohort> opened(List<Cohort> cohorts, String first) {
        return cohorts.stream()
                .filter(cohort -> cohort.month().toString().equals(first))
                .findFirst();
    }

    private static @Nullable BigDecimal value(@Nullable Percent percent) {
        return percent == null ? null : percent.value();
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
