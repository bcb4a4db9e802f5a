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
import patinary.web.Window;

/** The list of supplies, and the page of one. */
@Controller
@RequestMapping("/supplies")
class SupplyController {

    private final SupplyList list;
    private final SupplyLines lines;
    private final SupplyPage page;

    SupplyController(SupplyList list, SupplyLines lines, SupplyPage page) {
        this.list = list;
        this.lines = lines;
        this.page = page;
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
        return this.page.show(id, page, null, model);
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
