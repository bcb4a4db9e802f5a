package patinary.photos;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.phone.Delivery;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The page that adds photos to a piece or a paper, and the buttons that put them in order. */
@Controller
@RequestMapping("/photos")
class PhotoController {

    private static final String WAITING = "/photos/match";

    private final Taking taking;
    private final Photos photos;
    private final Subjects subjects;
    private final MatchPage match;

    PhotoController(Taking taking, Photos photos, Subjects subjects, MatchPage match) {
        this.taking = taking;
        this.photos = photos;
        this.subjects = subjects;
        this.match = match;
    }

    @GetMapping("/new")
    String fresh(@RequestParam String of, Model model) {
        Subjects.Named named = Ids.read(of).flatMap(subjects::find).orElseThrow(() -> new NotFound("subject " + of));
        PhotoForm form = new PhotoForm();
        form.id = UUID.randomUUID().toString();
        form.of = of;
        form.stage = named.usual().name();
        model.addAttribute("form", form);
        return page(named, model);
    }

    @PostMapping
    String add(
            @ModelAttribute("form") PhotoForm form,
            BindingResult errors,
            @RequestParam(name = "file", required = false) List<MultipartFile> file,
            Principal who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Optional<Taking.Belonging> belonging = taking.read(form, errors);
        int kept = belonging
                .map(known -> taking.keep(form, known, file == null ? List.of() : file, who.getName(), errors))
                .orElse(0);
        if (errors.hasErrors()) {
            response.setStatus(422);
            form.id = UUID.randomUUID().toString();
            model.addAttribute("kept", kept);
            Subjects.Named named = Ids.read(form.of).flatMap(subjects::find).orElse(null);
            return named == null ? match.page(new MatchForm(), model) : page(named, model);
        }
        Notice.next(redirect, "photos.kept", String.valueOf(kept));
        return "redirect:" + next(form, belonging.map(Taking.Belonging::named));
    }

    /** A photo that a phone, or the page's script, delivers by itself; it may come again. */
    @PostMapping(headers = Delivery.KEY)
    ResponseEntity<?> deliver(
            @ModelAttribute("form") PhotoForm form,
            BindingResult errors,
            @RequestParam(name = "file", required = false) List<MultipartFile> file,
            Principal who,
            Delivery delivery) {
        return delivery.once(errors, () -> {
            Taking.Belonging belonging = taking.read(form, errors).orElse(null);
            if (belonging == null) {
                return null;
            }
            taking.keep(form, belonging, file == null ? List.of() : file, who.getName(), errors);
            return new Delivery.Stored(place(belonging.subject()), "photos.delivered");
        });
    }

    /** One button of a photo: where it stands, what it shows, whether it is there. */
    @PostMapping(Ids.PATH + "/arrange")
    String arrange(@PathVariable UUID id, @RequestParam String act, RedirectAttributes redirect) {
        Photo photo = photos.find(id);
        switch (act) {
            case "first" -> photos.putFirst(id);
            case "earlier" -> photos.shift(id, -1);
            case "later" -> photos.shift(id, 1);
            case "away" -> {
                photos.takeAway(id);
                Notice.next(redirect, "photos.taken-away");
            }
            case "back" -> photos.bringBack(id);
            case "BEFORE", "DURING", "AFTER" -> photos.restage(id, Stage.valueOf(act));
            default -> throw new NotFound("act " + act);
        }
        return "redirect:" + place(photo.subject());
    }

    private String place(Subject subject) {
        return subject.kind() == Subject.Kind.NONE
                ? WAITING
                : subjects.find(subject.id())
                        .map(named -> named.path() + "#photos")
                        .orElse(WAITING);
    }

    private static String next(PhotoForm form, Optional<Subjects.Named> named) {
        return named.map(known -> form.stay.isEmpty() ? known.path() + "#photos" : "/photos/new?of=" + known.id())
                .orElse(WAITING);
    }

    private static String page(Subjects.Named named, Model model) {
        model.addAttribute("named", named);
        model.addAttribute("stages", Stage.ofPiece());
        return "photos/new";
    }
}
