package patinary.taxyear;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.web.NotFound;
import patinary.web.Page;
import patinary.web.Window;

/** The things behind one item of what is open in a year. */
@Controller
class ClosingController {

    private final Closing closing;

    ClosingController(Closing closing) {
        this.closing = closing;
    }

    @GetMapping("/year/{year:[0-9]{4}}/open/{key}")
    String rows(
            @PathVariable int year,
            @PathVariable String key,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        YearController.require(year);
        ClosingItem item = Arrays.stream(ClosingItem.values())
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new NotFound("item " + key));
        Window window = Window.of(page);
        List<ClosingRow> rows = closing.rows(year, item);
        model.addAttribute("year", year);
        model.addAttribute("item", item);
        model.addAttribute("rows", Page.within(rows, window));
        return "taxyear/open";
    }
}
