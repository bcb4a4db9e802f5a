package patinary.bringing;

import jakarta.servlet.http.HttpServletResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.web.NotFound;
import patinary.web.Window;

/** The page on which she says which piece, or which supply from the shelf, a row is about. */
@Controller
@RequestMapping("/sales/bring/{id}/rows")
class RowsController {

    private final Drafts drafts;
    private final Bringing bringing;
    private final RowsPage page;

    RowsController(Drafts drafts, Bringing bringing, RowsPage page) {
        this.drafts = drafts;
        this.bringing = bringing;
        this.page = page;
    }

    @GetMapping
    String show(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "false") boolean all,
            @RequestParam(name = "page", required = false) @Nullable Integer number,
            Model model) {
        Drafts.Draft draft = draft(id);
        return draft.mapping().isReady()
                ? page.fill(model, draft, all, Window.of(number))
                : "redirect:/sales/bring/" + id;
    }

    @PostMapping
    String choose(
            @PathVariable UUID id,
            @ModelAttribute("form") RowsForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "false") boolean all,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response) {
        Drafts.Draft draft = draft(id);
        Planner planner = bringing.planner(draft);
        if (act.equals("out-rest")) {
            Map<Integer, Optional<RowChoice>> rest = new HashMap<>();
            page.rows(draft, planner, false).forEach(row -> rest.put(row.number(), Optional.of(RowChoice.OUT)));
            drafts.choose(id, rest);
            return "redirect:/sales/bring/" + id + "/check";
        }
        Map<Integer, Optional<RowChoice>> choices = page.read(form, planner.goods(), errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page.again(model, draft, all, form);
        }
        drafts.choose(id, choices);
        List<Sheet.Row> open = page.rows(draft, bringing.planner(draft), false);
        return "redirect:/sales/bring/" + id + (open.isEmpty() || act.equals("check") ? "/check" : "/rows");
    }

    private Drafts.Draft draft(UUID id) {
        return drafts.find(id).orElseThrow(() -> new NotFound("Draft " + id));
    }
}
