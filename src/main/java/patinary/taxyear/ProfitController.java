package patinary.taxyear;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.taxbasis.TaxYears;
import patinary.web.CsvFile;
import patinary.web.Dates;
import patinary.web.Window;

/** What the profit by the books of some days is made of, document by document. */
@Controller
@RequestMapping("/year")
class ProfitController {

    private record Days(LocalDate first, LocalDate last) {}

    private final ProfitRows rows;
    private final TaxYears years;
    private final CurrentShop shop;

    ProfitController(ProfitRows rows, TaxYears years, CurrentShop shop) {
        this.rows = rows;
        this.years = years;
        this.shop = shop;
    }

    @GetMapping("/profit")
    String page(
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        Days days = days(from, to);
        ProfitRows.Answer answer = rows.page(days.first(), days.last(), Window.of(page));
        model.addAttribute("first", days.first());
        model.addAttribute("last", days.last());
        model.addAttribute("rows", answer.rows());
        model.addAttribute("profit", answer.profit());
        return "taxyear/profit";
    }

    @GetMapping("/profit.csv")
    ResponseEntity<byte[]> csv(
            @RequestParam(defaultValue = "") String from, @RequestParam(defaultValue = "") String to) {
        Days days = days(from, to);
        CsvFile file = new CsvFile(shop.currency(), "date", "kind", "what", "note", "profit");
        for (YearBooks.Row row : rows.all(days.first(), days.last())) {
            file.row(row.docDate(), row.kind(), row.what(), row.note(), row.amount());
        }
        return file.download("profit-by-document.csv");
    }

    /** What was asked for, or the running tax year up to today. */
    private Days days(String from, String to) {
        LocalDate last = Dates.read(to).orElseGet(shop::today);
        LocalDate first = Dates.read(from).orElseGet(() -> years.first(years.of(last)));
        return first.isAfter(last) ? new Days(last, last) : new Days(first, last);
    }
}
