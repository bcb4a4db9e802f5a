package patinary.bench;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** What went wrong: by supply line and surface, then one by one. */
@Controller
@RequestMapping("/bench/mishaps")
class MishapController {

    private static final int TOLD = 200;

    private final MishapBook mishaps;

    MishapController(MishapBook mishaps) {
        this.mishaps = mishaps;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute(
                "rates",
                mishaps.rates().stream().filter(rate -> rate.failed() > 0).toList());
        model.addAttribute("told", mishaps.told(TOLD));
        return "bench/mishaps";
    }
}
