package patinary.grounds;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.money.Amount;
import patinary.money.UnreadableAmount;
import patinary.shop.CurrentShop;
import patinary.web.NotFound;
import patinary.web.Window;

/** What the amounts of a year rest on. */
@Controller
@RequestMapping("/year/{year:[0-9]{4}}/rests-on")
class GroundController {

    private static final int FIRST_YEAR = 1900;

    private final GroundBook book;
    private final CurrentShop shop;

    GroundController(GroundBook book, CurrentShop shop) {
        this.book = book;
        this.shop = shop;
    }

    @GetMapping
    String all(@PathVariable int year, @RequestParam(defaultValue = "") String over, Model model) {
        Amount least = prepare(year, over, model);
        List<GroundBook.Total> totals = Stream.of(Ground.values())
                .map(one -> book.total(one, year, least))
                .toList();
        model.addAttribute("totals", totals);
        model.addAttribute("papers", book.papers(year));
        return "grounds/grounds";
    }

    @GetMapping("/{key}")
    String one(
            @PathVariable int year,
            @PathVariable String key,
            @RequestParam(defaultValue = "") String over,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        Ground ground = Ground.ofKey(key).orElseThrow(() -> new NotFound("ground " + key));
        Amount least = prepare(year, over, model);
        model.addAttribute("ground", ground);
        model.addAttribute("rows", book.rows(ground, year, least, Window.of(page)));
        model.addAttribute("total", book.total(ground, year, least));
        return "grounds/ground";
    }

    /** The amount above which documents are listed; what cannot be read is said and leaves nothing out. */
    private Amount prepare(int year, String over, Model model) {
        if (year < FIRST_YEAR) {
            throw new NotFound("year " + year);
        }
        Amount least = Amount.ZERO;
        boolean unreadable = false;
        if (!over.isBlank()) {
            try {
                least = shop.currency().parse(over).max(Amount.ZERO);
            } catch (UnreadableAmount wrong) {
                unreadable = true;
            }
        }
        model.addAttribute("year", year);
        model.addAttribute("over", over);
        model.addAttribute("unreadable", unreadable);
        return least;
    }
}
