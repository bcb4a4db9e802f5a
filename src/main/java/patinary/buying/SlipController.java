package patinary.buying;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.UUID;
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
import patinary.photos.PaperPhotos;
import patinary.slips.Slip;
import patinary.slips.SlipDesk;

/** Reads a receipt's photo and offers what it seems to say. Nothing but the photo is kept until the receipt is saved. */
@Controller
@RequestMapping("/receipts/read")
class SlipController {

    private final SlipDesk slips;
    private final PaperPhotos photos;
    private final Sources sources;
    private final ReceiptFill fill;
    private final ReceiptChoices choices;

    SlipController(SlipDesk slips, PaperPhotos photos, Sources sources, ReceiptFill fill, ReceiptChoices choices) {
        this.slips = slips;
        this.photos = photos;
        this.sources = sources;
        this.fill = fill;
        this.choices = choices;
    }

    @GetMapping
    String ask(@ModelAttribute("form") SlipForm form, Model model) {
        model.addAttribute("installed", slips.isInstalled());
        return "buying/slip-new";
    }

    @PostMapping
    String take(
            @ModelAttribute("form") SlipForm form,
            BindingResult errors,
            @RequestParam MultipartFile file,
            Principal who,
            Model model,
            HttpServletResponse response) {
        UUID photo = photos.keep(file, who.getName(), errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return ask(form, model);
        }
        return "redirect:/receipts/read/" + photo;
    }

    @GetMapping("/{photo}")
    String show(@PathVariable UUID photo, Model model) {
        Slip slip = photos.file(photo).flatMap(slips::read).orElse(null);
        model.addAttribute("photo", photo);
        model.addAttribute("slip", slip);
        model.addAttribute("installed", slip != null || slips.isInstalled());
        model.addAttribute(
                "form", slip == null ? new SlipForm() : SlipFill.suggest(slip, sources.findAllByOrderByName()));
        choices.offer(model);
        return "buying/slip";
    }

    /** Draws the ordinary form of a new receipt with what was ticked in it. */
    @PostMapping("/{photo}")
    String use(@PathVariable UUID photo, @ModelAttribute("ticked") SlipForm ticked, Model model) {
        ReceiptForm form = fill.empty();
        form.lines.clear();
        form.charges.clear();
        SlipFill.fill(form, ticked);
        form.photo = photo.toString();
        form.paidWith = choices.usual();
        model.addAttribute("form", form);
        choices.offer(model);
        model.addAttribute("change", false);
        return "buying/receipt-form";
    }
}
