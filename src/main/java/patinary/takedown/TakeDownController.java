package patinary.takedown;

import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Notice;

/** What still stands where it can no longer be had; one tap says that it is taken down. */
@Controller
@RequestMapping("/take-down")
class TakeDownController {

    private final TakeDowns downs;

    TakeDownController(TakeDowns downs) {
        this.downs = downs;
    }

    @GetMapping
    String list(@RequestParam(defaultValue = "false") boolean older, Model model) {
        model.addAttribute("due", downs.due(older));
        model.addAttribute("older", older);
        model.addAttribute("recent", TakeDowns.RECENT);
        model.addAttribute("done", downs.doneToday());
        model.addAttribute("unlisted", downs.unlisted());
        return "takedown/list";
    }

    @PostMapping("/{channel}/{offer}")
    String done(
            @PathVariable UUID channel,
            @PathVariable UUID offer,
            @RequestParam(defaultValue = "false") boolean older,
            RedirectAttributes redirect) {
        Notice.next(redirect, downs.done(offer, channel) ? "takedown.done" : "takedown.not-due");
        return back(older);
    }

    @PostMapping("/{channel}/all")
    String allDone(
            @PathVariable UUID channel,
            @RequestParam(defaultValue = "false") boolean older,
            RedirectAttributes redirect) {
        Notice.next(redirect, "takedown.all-done", String.valueOf(downs.allDone(channel, older)));
        return back(older);
    }

    @PostMapping("/{channel}/{offer}/back")
    String again(@PathVariable UUID channel, @PathVariable UUID offer, RedirectAttributes redirect) {
        downs.back(offer, channel);
        Notice.next(redirect, "takedown.back");
        return back(false);
    }

    @PostMapping("/{channel}/unlisted")
    String unlisted(@PathVariable UUID channel, RedirectAttributes redirect) {
        downs.listed(channel, false);
        Notice.next(redirect, "takedown.unlisted");
        return back(false);
    }

    @PostMapping("/{channel}/listed")
    String listed(@PathVariable UUID channel, RedirectAttributes redirect) {
        downs.listed(channel, true);
        Notice.next(redirect, "takedown.listed");
        return back(false);
    }

    private static String back(boolean older) {
        return "redirect:/take-down" + (older ? "?older=true" : "");
    }
}
