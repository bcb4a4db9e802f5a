package patinary.finishes;

import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The list of finishes, and the pages of one. */
@Controller
@RequestMapping("/finishes")
class FinishController {

    private final FinishBook book;
    private final FinishKeeping keeping;
    private final FinishPage page;
    private final FollowedPieces followed;

    FinishController(FinishBook book, FinishKeeping keeping, FinishPage page, FollowedPieces followed) {
        this.book = book;
        this.keeping = keeping;
        this.page = page;
        this.followed = followed;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("rows", book.all());
        model.addAttribute("times", followed.times());
        return "finishes/list";
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, Model model) {
        FinishBook.Kept kept = find(id);
        page.finish(model, kept);
        Map<UUID, Estimate.Stock> stock = followed.stock(kept.finish().supplies());
        model.addAttribute("followed", Followed.of(kept.finish(), followed.of(id), stock));
        return "finishes/show";
    }

    /** On paper, for the wall above the bench. */
    @GetMapping(Ids.PATH + "/print")
    String print(@PathVariable UUID id, Model model) {
        page.finish(model, find(id));
        return "finishes/print";
    }

    @GetMapping(Ids.PATH + "/remove")
    String sure(@PathVariable UUID id, Model model) {
        model.addAttribute("kept", find(id));
        return "finishes/remove";
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        String name = find(id).finish().name();
        keeping.remove(id);
        Notice.next(redirect, "finishes.removed", name);
        return "redirect:/finishes";
    }

    private FinishBook.Kept find(UUID id) {
        return book.find(id).orElseThrow(() -> new NotFound("finish " + id));
    }
}
