package patinary.selling;

import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Where selling at the stall used to be: bookmarks lead on. */
@Controller
@RequestMapping("/sales/quick")
class OldStallController {

    @GetMapping
    String list(@RequestParam(defaultValue = "") String q, RedirectAttributes redirect) {
        if (!q.isBlank()) {
            redirect.addAttribute("q", q);
        }
        return "redirect:/stall";
    }

    @GetMapping("/{offer}")
    String one(@PathVariable UUID offer, RedirectAttributes redirect) {
        redirect.addAttribute("offer", offer);
        return "redirect:/stall";
    }
}
