package patinary.pieces;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
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
import patinary.web.Ids;
import patinary.web.Notice;
import patinary.web.Window;

/** The list of pieces, the page of one with its cost card, and the form that changes it. */
@Controller
@RequestMapping("/pieces")
class PieceController {

    private final PieceList list;
    private final PieceDesk desk;
    private final PieceReading reading;
    private final OwnLists lists;
    private final CostCards cards;
    private final PieceStory story;
    private final PlannedFinishes finishes;

    PieceController(
            PieceList list,
            PieceDesk desk,
            PieceReading reading,
            OwnLists lists,
            CostCards cards,
            PieceStory story,
            PlannedFinishes finishes) {
        this.list = list;
        this.desk = desk;
        this.reading = reading;
        this.lists = lists;
        this.cards = cards;
        this.story = story;
        this.finishes = finishes;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String state,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "") String style,
            @RequestParam(defaultValue = "") String source,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "") String sort,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        PieceQuery query = new PieceQuery(q, state, kind, style, source, place, sort);
        model.addAttribute("wanted", query);
        model.addAttribute("rows", list.find(query, Window.of(page)));
        model.addAttribute("states", PieceState.choices());
        model.addAttribute("sorts", PieceQuery.sorts());
        model.addAttribute("sources", list.sources());
        model.addAttribute("places", list.places());
        offerLists(model);
        return "pieces/pieces";
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, Model model) {
        PieceDesk.Stored piece = desk.read(id);
        model.addAttribute("id", id);
        model.addAttribute("facts", piece.facts());
        model.addAttribute("area", piece.form().area);
        PieceStory.Names names = story.names(id);
        model.addAttribute(
                "usual",
                piece.facts().area() == null && names.usualArea() != null ? PieceForm.area(names.usualArea()) : null);
        model.addAttribute("names", names);
        model.addAttribute("card", cards.of(id));
        List<PieceStory.Event> events = story.events(id);
        model.addAttribute("events", events);
        model.addAttribute("gone", PieceStory.gone(events).orElse(null));
        return "pieces/piece";
    }

    @GetMapping(Ids.PATH + "/edit")
    String edit(@PathVariable UUID id, Model model) {
        model.addAttribute("form", desk.read(id).form());
        return form(id, model);
    }

    @PostMapping(Ids.PATH + "/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") PieceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        PieceReading.Typed typed = reading.read(form, desk.read(id), errors);
        if (!errors.hasErrors()) {
            store(id, form, typed, errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return form(id, model);
        }
        Notice.next(redirect, "pieces.saved", typed.facts().code());
        return "redirect:/pieces/" + id;
    }

    /** Another window may have taken the code between the look and the change; the database has the last word. */
    private void store(UUID id, PieceForm form, PieceReading.Typed typed, BindingResult errors) {
        try {
            desk.change(id, form.version, typed);
        } catch (DataIntegrityViolationException taken) {
            errors.rejectValue("code", "pieces.error.code-taken", new Object[] {form.code}, null);
        }
    }

    private String form(UUID id, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("places", list.places());
        model.addAttribute("shapes", SurfaceReading.shapes());
        model.addAttribute("finishes", finishes.choices());
        offerLists(model);
        return "pieces/piece-form";
    }

    private void offerLists(Model model) {
        model.addAttribute("kinds", lists.choices(OwnList.KINDS));
        model.addAttribute("styles", lists.choices(OwnList.STYLES));
    }
}
