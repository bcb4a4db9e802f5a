package patinary.covering;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The page of one payout: what it covers, or what it may cover. */
@Controller
@RequestMapping("/payouts" + Ids.PATH)
class CoverController {

    /** A page of more rows than these is no help; the oldest come first and are covered first. */
    private static final int MOST = 600;

    private final CoverBook book;

    CoverController(CoverBook book) {
        this.book = book;
    }

    /** Ticks nothing by itself; with the number of a proposal, what that proposes. */
    @GetMapping
    String show(@PathVariable UUID id, @RequestParam(required = false) @Nullable Integer proposal, Model model) {
        Cover cover = cover(id);
        if (cover.isSaid()) {
            model.addAttribute("cover", cover);
            return "covering/payout";
        }
        List<Movement> open = book.open(cover.payout());
        List<Fit> fits =
                FitSearch.of(open, cover.payout().docDate(), cover.payout().out());
        Set<UUID> ticked = proposal != null && proposal >= 0 && proposal < fits.size()
                ? fits.get(proposal).documents()
                : Set.of();
        return choose(cover, open, fits, ticked, model);
    }

    /** Says what it covers, or with {@code act=sum} only works out what is ticked. */
    @PostMapping
    String say(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "") List<UUID> covered,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Cover cover = cover(id);
        Set<UUID> ticked = new LinkedHashSet<>(covered);
        boolean saving = act.equals("save");
        if (saving && !ticked.isEmpty() && book.say(id, ticked)) {
            Notice.next(redirect, "covering.saved");
            return "redirect:/payouts/" + id;
        }
        if (saving) {
            response.setStatus(422);
            model.addAttribute("wrong", ticked.isEmpty() ? "covering.error.none" : "covering.error.taken");
        }
        List<Movement> open = book.open(cover.payout());
        model.addAttribute("worked", true);
        return choose(
                cover,
                open,
                FitSearch.of(open, cover.payout().docDate(), cover.payout().out()),
                ticked,
                model);
    }

    @PostMapping("/take-back")
    String takeBack(@PathVariable UUID id, RedirectAttributes redirect) {
        book.takeBack(cover(id).payout().id());
        Notice.next(redirect, "covering.taken-back");
        return "redirect:/payouts/" + id;
    }

    private Cover cover(UUID id) {
        return book.find(id).orElseThrow(() -> new NotFound("Payout " + id));
    }

    private static String choose(Cover cover, List<Movement> open, List<Fit> fits, Set<UUID> ticked, Model model) {
        List<Movement> chosen = open.stream()
                .filter(movement -> ticked.contains(movement.documentId()))
                .toList();
        List<Movement> shown = new ArrayList<>(open.subList(0, Math.min(MOST, open.size())));
        chosen.stream().filter(movement -> !shown.contains(movement)).forEach(shown::add);
        model.addAttribute("payout", cover.payout());
        model.addAttribute("open", shown);
        model.addAttribute("more", open.size() - shown.size());
        model.addAttribute("fits", fits);
        model.addAttribute("ticked", ticked);
        model.addAttribute("sum", Movement.sum(chosen));
        model.addAttribute("rest", cover.payout().out().minus(Movement.sum(chosen)));
        return "covering/choose";
    }
}
