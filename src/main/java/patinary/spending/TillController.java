package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The cash box: the float before a market day, the count after it, and what the counts found. */
@Controller
class TillController {

    private static final int LATEST = 20;

    private final TillBooks till;
    private final MoneyDesk desk;

    TillController(TillBooks till, MoneyDesk desk) {
        this.till = till;
        this.desk = desk;
    }

    @GetMapping("/till")
    String show(Model model) {
        model.addAttribute("boxes", till.boxes());
        model.addAttribute("counts", till.latest(LATEST));
        model.addAttribute("today", desk.shop.today());
        return "spending/till";
    }
}
