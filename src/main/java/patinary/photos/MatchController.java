package patinary.photos;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Ids;
import patinary.web.Notice;

/** Many photos at once: they wait here until each is given to its piece. */
@Controller
@RequestMapping("/photos/match")
class MatchController {

    private final Photos photos;
    private final Subjects subjects;
    private final MatchPage page;

    MatchController(Photos photos, Subjects subjects, MatchPage page) {
        this.photos = photos;
        this.subjects = subjects;
        this.page = page;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("form", new PhotoForm());
        return page.page(new MatchForm(), model);
    }

    /** A search only draws the page again, with the same photos ticked. */
    @PostMapping
    String match(
            @ModelAttribute("form") MatchForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (form.action.equals("search")) {
            return page.page(form, model);
        }
        List<UUID> chosen =
                form.photo.stream().map(Ids::read).flatMap(Optional::stream).toList();
        if (chosen.isEmpty()) {
            errors.rejectValue("photo", "photos.error.none-ticked");
        } else if (form.action.equals("away")) {
            chosen.forEach(photos::takeAway);
            Notice.next(redirect, "photos.taken-away");
        } else {
            match(form, chosen, errors, redirect);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page.page(form, model);
        }
        return "redirect:/photos/match";
    }

    private void match(MatchForm form, List<UUID> chosen, BindingResult errors, RedirectAttributes redirect) {
        Subjects.Named piece = Ids.read(form.to)
                .flatMap(subjects::find)
                .filter(Subjects.Named::isPiece)
                .orElse(null);
        boolean known = Stage.ofPiece().stream().anyMatch(stage -> stage.value().equals(form.stage));
        if (piece == null || !known) {
            errors.rejectValue(
                    piece == null ? "to" : "stage", piece == null ? "photos.error.to" : "photos.error.stage");
            return;
        }
        photos.match(chosen, piece.subject(), Stage.valueOf(form.stage));
        Notice.next(redirect, "photos.matched", String.valueOf(chosen.size()), piece.code() + " " + piece.title());
    }
}
