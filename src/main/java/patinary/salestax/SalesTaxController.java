package patinary.salestax;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The report of sales tax by place and period. */
@Controller
@RequestMapping("/sales-tax")
class SalesTaxController {

    private final TaxReports reports;
    private final TaxPlaces places;
    private final CurrentShop shop;

    SalesTaxController(TaxReports reports, TaxPlaces places, CurrentShop shop) {
        this.reports = reports;
        this.places = places;
        this.shop = shop;
    }

    /** A period as its two fields say; the quarter of today where nothing readable is said. */
    private Period period(String year, String part) {
        LocalDate today = shop.today();
        if (!year.matches("\\d{4}")) {
            return Period.quarterOf(today);
        }
        return Period.of(Integer.parseInt(year), part).orElse(Period.quarterOf(today));
    }

    @GetMapping
    String show(
            @RequestParam(defaultValue = "") String year, @RequestParam(defaultValue = "") String part, Model model) {
        Period period = period(year, part);
        TaxReport report = reports.of(period);
        Map<UUID, LocalDate> filed = reports.filed(period);
        model.addAttribute("report", report);
        model.addAttribute(
                "rows",
                inOrder(report).stream()
                        .map(line -> Standing.of(line, period, shop.today(), filed.get(line.place())))
                        .toList());
        model.addAttribute("account", reports.account(period.last()));
        model.addAttribute(
                "longer",
                reports.settlements().stream()
                        .filter(one -> period.touches(one.coversFrom(), one.coversTo())
                                && !period.holds(one.coversFrom(), one.coversTo()))
                        .toList());
        furnish(period, model);
        return "salestax/report";
    }

    @GetMapping(Ids.PATH)
    String rows(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "") String year,
            @RequestParam(defaultValue = "") String part,
            Model model) {
        Period period = period(year, part);
        Map<UUID, String> names = names();
        if (!id.equals(TaxRow.NO_PLACE) && !names.containsKey(id)) {
            throw new NotFound("Tax place " + id);
        }
        List<TaxRow> rows = reports.rows(period).stream()
                .filter(row -> row.place().equals(id))
                .toList();
        model.addAttribute("place", id);
        model.addAttribute("rows", rows);
        furnish(period, model);
        return "salestax/rows";
    }

    @GetMapping("/file.csv")
    ResponseEntity<byte[]> file(
            @RequestParam(defaultValue = "") String year, @RequestParam(defaultValue = "") String part) {
        Period period = period(year, part);
        Map<UUID, String> names = names();
        CsvFile file = new CsvFile(
                shop.currency(),
                "tax_place",
                "from",
                "to",
                "sales",
                "channel_pays_tax",
                "not_taxed",
                "taxed",
                "taxed_given_back",
                "other_given_back",
                "taxable",
                "tax_charged",
                "tax_given_back",
                "tax_owed",
                "tax_paid_by_channels",
                "due_before",
                "paid_over",
                "due_after",
                "settled_for_period",
                "open_for_period");
        for (TaxLine line : inOrder(reports.of(period))) {
            file.row(
                    names.getOrDefault(line.place(), ""),
                    period.first(),
                    period.last(),
                    line.sales(),
                    line.passed(),
                    line.untaxed(),
                    line.taxed(),
                    line.taxedBack(),
                    line.otherBack(),
                    line.taxable(),
                    line.charged(),
                    line.givenBack(),
                    line.owed(),
                    line.passedTax(),
                    line.before(),
                    line.paidOver(),
                    line.after(),
                    line.settled(),
                    line.open());
        }
        return file.download("sales-tax-" + period.first() + "-to-" + period.last() + ".csv");
    }

    @PostMapping(Ids.PATH + "/filed")
    String filed(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "") String year,
            @RequestParam(defaultValue = "") String part,
            RedirectAttributes redirect) {
        Period period = period(year, part);
        reports.file(id, period, shop.today());
        Notice.next(redirect, "salestax.filed.saved");
        return back(period);
    }

    @PostMapping(Ids.PATH + "/not-filed")
    String notFiled(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "") String year,
            @RequestParam(defaultValue = "") String part,
            RedirectAttributes redirect) {
        Period period = period(year, part);
        reports.unfile(id, period);
        Notice.next(redirect, "salestax.filed.removed");
        return back(period);
    }

    private void furnish(Period period, Model model) {
        model.addAttribute("period", period);
        model.addAttribute("parts", Period.parts(LocaleContextHolder.getLocale()));
        model.addAttribute("names", names());
        model.addAttribute("currency", shop.currency());
    }

    /** By name, what has no place last. */
    private List<TaxLine> inOrder(TaxReport report) {
        Map<UUID, String> names = names();
        return report.lines().stream()
                .sorted(Comparator.comparing(TaxLine::hasPlace)
                        .reversed()
                        .thenComparing(
                                line -> names.getOrDefault(line.place(), "").toLowerCase(Locale.ROOT)))
                .toList();
    }

    private Map<UUID, String> names() {
        return places.all().stream().collect(Collectors.toMap(TaxPlace::id, TaxPlace::name));
    }

    private static String back(Period period) {
        return "redirect:/sales-tax?year=" + period.year() + "&part=" + period.part();
    }
}
