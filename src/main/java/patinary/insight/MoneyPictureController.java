package patinary.insight;

import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;

/** The figures of the pictures that stand beside an opened row of the money, each as a file. */
@Controller
class MoneyPictureController {

    private final MoneyReport report;
    private final Traits traits;
    private final CurrentShop shop;

    MoneyPictureController(MoneyReport report, Traits traits, CurrentShop shop) {
        this.report = report;
        this.traits = traits;
        this.shop = shop;
    }

    @GetMapping("/moves/money/fall.csv")
    ResponseEntity<byte[]> fall(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row) {
        CsvFile file = new CsvFile(shop.currency(), "step", "amount");
        MoneyPictures.fall(row(asked, by, row).parts()).forEach(step -> file.row(step.key(), step.amount()));
        return file.download("from-price-to-profit.csv");
    }

    @GetMapping("/moves/money/months.csv")
    ResponseEntity<byte[]> months(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row) {
        Period period = asked.period(shop.today());
        CsvFile file = new CsvFile(shop.currency(), "month", "sold", "net_sales", "profit");
        MoneyPictures.months(row(asked, by, row).sales(), period.first(), period.last())
                .forEach(month -> file.row(month.month().toString(), month.pieces(), month.net(), month.profit()));
        return file.download("sales-by-month.csv");
    }

    /** Nothing but its head where stock belongs to no such group. */
    @GetMapping("/moves/money/age.csv")
    ResponseEntity<byte[]> ages(
            Asked asked,
            @RequestParam(defaultValue = "style") String by,
            @RequestParam(required = false) @Nullable Integer row) {
        CsvFile file = new CsvFile(shop.currency(), "days_since_found_from", "pieces", "tied_up");
        MoneyPictures.ages(row(asked, by, row)).forEach(age -> file.row(age.from(), age.pieces(), age.tied()));
        return file.download("age-of-stock.csv");
    }

    private MoneyRow row(Asked asked, String by, @Nullable Integer row) {
        Period period = asked.period(shop.today());
        return report.answer(MoneyBy.of(by), period.first(), period.last(), traits.narrowing(asked))
                .table()
                .row(row);
    }
}
