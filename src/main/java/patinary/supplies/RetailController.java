package patinary.supplies;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** The retail shelf: what stands there, what is asked, what it is worth at cost, what was sold. */
@Controller
@RequestMapping("/supplies/shelf")
class RetailController {

    private final RetailList shelf;
    private final TakingList takings;
    private final BundleRows bundles;
    private final CurrentShop shop;

    RetailController(RetailList shelf, TakingList takings, BundleRows bundles, CurrentShop shop) {
        this.shelf = shelf;
        this.takings = takings;
        this.bundles = bundles;
        this.shop = shop;
    }

    @GetMapping
    String show(@RequestParam(defaultValue = "") String day, Model model) {
        LocalDate at = read(day);
        List<RetailList.Row> rows = shelf.at(at);
        model.addAttribute("day", at);
        model.addAttribute("yearEnd", LocalDate.of(shop.today().getYear() - 1, 12, 31));
        model.addAttribute("rows", rows);
        model.addAttribute("takings", takings.of(at.getYear()));
        model.addAttribute("bundles", bundles.at(rows));
        model.addAttribute(
                "worth", rows.stream().mapToLong(RetailList.Row::costMinor).sum());
        model.addAttribute(
                "earned", rows.stream().mapToLong(RetailList.Row::earnedMinor).sum());
        return "supplies/shelf";
    }

    /** A day that cannot be read is today: the page says which day it shows. */
    private LocalDate read(String day) {
        try {
            return day.isBlank() ? shop.today() : Answers.day(day);
        } catch (DateTimeParseException unreadable) {
            return shop.today();
        }
    }
}
