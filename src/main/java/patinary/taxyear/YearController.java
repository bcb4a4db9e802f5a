package patinary.taxyear;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.spending.Vehicles;
import patinary.taxbasis.Adjustment;
import patinary.taxbasis.TaxYears;
import patinary.web.NotFound;

/** The records of one year, and the rows behind each line. */
@Controller
@RequestMapping("/year")
class YearController {

    private static final String UNMAPPED = "unmapped";
    private static final Set<String> INCOME = Set.of("gross_receipts", "other_income");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 9999;

    private final Years years;
    private final YearBooks books;
    private final Seals seals;
    private final Corrections corrections;
    private final Vehicles vehicles;
    private final CurrentShop shop;
    private final TaxYears taxYears;

    YearController(
            Years years,
            YearBooks books,
            Seals seals,
            Corrections corrections,
            Vehicles vehicles,
            CurrentShop shop,
            TaxYears taxYears) {
        this.years = years;
        this.books = books;
        this.seals = seals;
        this.corrections = corrections;
        this.vehicles = vehicles;
        this.shop = shop;
        this.taxYears = taxYears;
    }

    @GetMapping
    String now() {
        return "redirect:/year/" + taxYears.of(shop.today());
    }

    @GetMapping("/{year:[0-9]{4}}")
    String page(
            @PathVariable int year,
            @RequestParam(defaultValue = "false") boolean whole,
            @RequestParam(defaultValue = "false") boolean beside,
            Model model) {
        require(year);
        YearPage page = years.page(year);
        model.addAttribute("whole", whole ? years.whole(year) : null);
        model.addAttribute("beside", beside ? YearBeside.of(page, years.page(year - 1), year - 1) : null);
        model.addAttribute("year", year);
        model.addAttribute("years", books.years());
        model.addAttribute("page", page);
        model.addAttribute("vehicle", YearVehicles.of(vehicles.year(year), books.miles(year)));
        model.addAttribute("first", books.first(year));
        model.addAttribute("last", books.last(year));
        model.addAttribute("basis", page.adjustments().is());
        List<YearBooks.Taken> taken = books.taken(year);
        model.addAttribute(
                "taken", taken.stream().mapToLong(YearBooks.Taken::costMinor).sum());
        model.addAttribute(
                "takenMarked",
                taken.stream()
                        .filter(YearBooks.Taken::ownUseTax)
                        .mapToLong(YearBooks.Taken::costMinor)
                        .sum());
        Map<Integer, UUID> sealed = seals.ids();
        model.addAttribute(
                "seal",
                Optional.ofNullable(sealed.get(year)).flatMap(seals::read).orElse(null));
        model.addAttribute("corrections", sealed.isEmpty() ? List.of() : corrections.in(year));
        model.addAttribute("ended", books.last(year).isBefore(shop.today()));
        return "taxyear/year";
    }

    @GetMapping("/{year:[0-9]{4}}/line/{meaning}")
    String line(@PathVariable int year, @PathVariable String meaning, Model model) {
        require(year);
        boolean unmapped = meaning.equals(UNMAPPED);
        TaxLine line = unmapped
                ? null
                : years.line(year, meaning).orElseThrow(() -> new NotFound("line " + meaning + " of " + year));
        boolean turned = INCOME.contains(meaning);
        List<YearBooks.Row> rows = unmapped ? years.unmappedRows(year) : years.rows(year, meaning);
        List<Adjustment> adjustments = unmapped ? years.unmappedAdjustments(year) : years.adjustments(year, meaning);
        Amount total = Stream.concat(
                        rows.stream().map(row -> Amount.of(row.amountMinor())),
                        adjustments.stream().map(row -> row.profit().negated()))
                .collect(Amount.sum());
        model.addAttribute("year", year);
        model.addAttribute("line", line);
        model.addAttribute("sign", turned ? -1 : 1);
        model.addAttribute("rows", rows);
        model.addAttribute("adjustments", adjustments);
        model.addAttribute("total", turned ? total.negated() : total);
        return "taxyear/line";
    }

    /** What was in stock when the year began or ended. */
    @GetMapping("/{year:[0-9]{4}}/stock")
    String stock(@PathVariable int year, Model model) {
        require(year);
        List<YearBooks.StockRow> rows = books.stock(books.last(year));
        model.addAttribute("year", year);
        model.addAttribute("day", books.last(year));
        model.addAttribute("rows", rows);
        model.addAttribute(
                "total", rows.stream().map(row -> Amount.of(row.amountMinor())).collect(Amount.sum()));
        model.addAttribute(
                "shelf",
                rows.stream()
                        .filter(row -> row.account().equals("SHELF"))
                        .map(row -> Amount.of(row.amountMinor()))
                        .collect(Amount.sum()));
        return "taxyear/stock";
    }

    static void require(int year) {
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw new NotFound("year " + year);
        }
    }
}
