package patinary.history;

import jakarta.servlet.http.HttpServletResponse;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Page;
import patinary.web.Window;

/** All changes of the shop, one act with everything that it changed, and its undoing. */
@Controller
@RequestMapping("/history")
class HistoryController {

    private final Changes changes;
    private final Telling telling;
    private final HistoryWords words;
    private final Undo undo;
    private final Refusal refusal;
    private final CurrentShop shop;

    HistoryController(
            Changes changes, Telling telling, HistoryWords words, Undo undo, Refusal refusal, CurrentShop shop) {
        this.changes = changes;
        this.telling = telling;
        this.words = words;
        this.undo = undo;
        this.refusal = refusal;
        this.shop = shop;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String day,
            @RequestParam(defaultValue = "") String who,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        LocalDate on = read(day);
        Page<Change> rows = changes.page(
                new Changes.Wanted(begin(on), on == null ? null : begin(on.plusDays(1)), who, kind), Window.of(page));
        model.addAttribute("rows", rows);
        model.addAttribute("told", telling.briefly(rows.rows()));
        model.addAttribute("day", on == null ? "" : on.toString());
        model.addAttribute("who", who);
        model.addAttribute("kind", kind);
        model.addAttribute(
                "people",
                changes.people().stream().map(name -> Choice.named(name, name)).toList());
        model.addAttribute(
                "kinds",
                changes.kinds().stream()
                        .map(table -> Choice.named(table, words.kind(table)))
                        .toList());
        return "history/list";
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, Model model) {
        model.addAttribute("form", new UndoForm());
        return page(id, model);
    }

    @PostMapping(Ids.PATH + "/undo")
    String undo(
            @PathVariable UUID id,
            @ModelAttribute("form") UndoForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            UUID done = undo.undo(id);
            Notice.next(redirect, "history.undone");
            return "redirect:/history/" + done;
        } catch (CannotUndo cannot) {
            errors.reject(cannot.reason().messageKey());
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
        response.setStatus(422);
        return page(id, model);
    }

    private String page(UUID id, Model model) {
        List<Change> all = changes.of(id);
        if (all.isEmpty()) {
            throw new NotFound("act " + id);
        }
        model.addAttribute("done", telling.told(all).get(0));
        model.addAttribute("mayUndo", undo.mayBe(id));
        return "history/act";
    }

    private static @Nullable LocalDate read(String day) {
        try {
            return day.isEmpty() ? null : LocalDate.parse(day);
        } catch (DateTimeException unreadable) {
            return null;
        }
    }

    private @Nullable Instant begin(@Nullable LocalDate day) {
        return day == null ? null : day.atStartOfDay(shop.zone()).toInstant();
    }
}
