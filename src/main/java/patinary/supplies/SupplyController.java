package patinary.supplies;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Window;

/** The list of supplies, and the page of one. */
@Controller
@RequestMapping("/supplies")
class SupplyController {

    private final SupplyList list;
    private final SupplyStory story;
    private final SupplyCatalog catalog;
    private final SupplyLines lines;
    private final SupplyKeeping keeping;
    private final List<SupplyHint> hints;

    SupplyController(
            SupplyList list,
            SupplyStory story,
            SupplyCatalog catalog,
            SupplyLines lines,
            SupplyKeeping keeping,
            List<SupplyHint> hints) {
        this.hints = hints;
        this.list = list;
        this.story = story;
        this.catalog = catalog;
        this.lines = lines;
        this.keeping = keeping;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(required = false) @Nullable UUID line,
            @RequestParam(required = false) SupplyList.@Nullable Show show,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        model.addAttribute("rows", list.find(new SupplyList.Filter(q, line, show), Window.of(page)));
        model.addAttribute("q", q);
        model.addAttribute("line", line == null ? "" : line.toString());
        model.addAttribute("show", show == null ? "" : show.name());
        model.addAttribute("lines", lineChoices(lines));
        model.addAttribute("shows", showChoices());
        model.addAttribute("filtered", !q.isBlank() || line != null || show != null);
        return "supplies/list";
    }

    @GetMapping("/{id}")
    String show(@PathVariable UUID id, @RequestParam(required = false) @Nullable Integer page, Model model) {
        SupplyCatalog.Known supply = catalog.find(id).orElseThrow(() -> new NotFound("supply " + id));
        model.addAttribute("supply", supply);
        model.addAttribute("facts", supply.facts());
        model.addAttribute("left", story.left(id));
        model.addAttribute("lots", story.lots(id));
        model.addAttribute("movements", story.movements(id, Window.of(page)));
        model.addAttribute("used", keeping.isUsed(id));
        model.addAttribute(
                "hints", hints.stream().flatMap(hint -> hint.about(id).stream()).toList());
        return "supplies/show";
    }

    static List<Choice> lineChoices(SupplyLines lines) {
        return lines.findAllByOrderByName().stream()
                .map(line -> Choice.named(line.id().toString(), line.name()))
                .toList();
    }

    private static List<Choice> showChoices() {
        return Arrays.stream(SupplyList.Show.values())
                .map(show -> Choice.said(show.name(), "supplies.show." + show.name()))
                .toList();
    }
}
