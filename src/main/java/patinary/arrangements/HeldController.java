package patinary.arrangements;

import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.Notice;

/** Who holds credit, what came of other income, and what lies in somebody else's shop. */
@Controller
@RequestMapping("/arrangements")
class HeldController {

    private final Held held;
    private final Away away;
    private final CurrentShop shop;

    HeldController(Held held, Away away, CurrentShop shop) {
        this.held = held;
        this.away = away;
        this.shop = shop;
    }

    @GetMapping("/credit")
    String credit(@RequestParam(defaultValue = "") String buyer, Model model) {
        model.addAttribute("buyers", held.buyers());
        model.addAttribute("buyer", buyer);
        model.addAttribute("steps", buyer.isBlank() ? java.util.List.of() : held.steps(buyer));
        return "arrangements/credit";
    }

    @GetMapping("/income")
    String income(Model model) {
        model.addAttribute("income", held.income());
        return "arrangements/income";
    }

    @GetMapping("/away")
    String away(Model model) {
        model.addAttribute("shops", away.shops());
        model.addAttribute("others", away.others());
        model.addAttribute("today", shop.today());
        return "arrangements/away";
    }

    @PostMapping("/away")
    String isAway(@RequestParam(defaultValue = "") String channel, RedirectAttributes redirect) {
        Ids.read(channel).ifPresent(id -> away.say(id, true));
        Notice.next(redirect, "arrangements.away.said");
        return "redirect:/arrangements/away";
    }

    @PostMapping("/away/{channel}/own")
    String isOwn(@PathVariable UUID channel, RedirectAttributes redirect) {
        away.say(channel, false);
        Notice.next(redirect, "arrangements.away.taken-off");
        return "redirect:/arrangements/away";
    }
}
