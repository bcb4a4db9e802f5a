package patinary.bringing;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
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
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Notice;

/** Takes a file in; lists what waits, what came in, and the saved mappings. */
@Controller
@RequestMapping("/sales/bring")
class BringController {

    private static final int SHOWN = 50;

    /** The file comes beside the form; a field of its name is there to say what is wrong with it. */
    static class UploadForm {
        public String upload = "";
    }

    private final Bringing bringing;
    private final Drafts drafts;
    private final Imports imports;
    private final SavedMappings mappings;
    private final KnownGoods known;

    BringController(Bringing bringing, Drafts drafts, Imports imports, SavedMappings mappings, KnownGoods known) {
        this.bringing = bringing;
        this.drafts = drafts;
        this.imports = imports;
        this.mappings = mappings;
        this.known = known;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("form", new UploadForm());
        return page(model);
    }

    @PostMapping
    String take(
            @ModelAttribute("form") UploadForm form,
            BindingResult errors,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response)
            throws IOException {
        if (file == null || file.isEmpty()) {
            errors.rejectValue("upload", "bringing.error.no-file");
        } else if (file.getSize() > Drafts.LARGEST) {
            errors.rejectValue("upload", "bringing.error.too-large", new Object[] {Drafts.LARGEST / 1_000_000}, null);
        } else if (drafts.all().size() >= Drafts.MOST) {
            errors.rejectValue("upload", "bringing.error.too-many", new Object[] {Drafts.MOST}, null);
        } else {
            return "redirect:/sales/bring/"
                    + bringing.take(String.valueOf(file.getOriginalFilename()), file.getBytes());
        }
        response.setStatus(422);
        return page(model);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        drafts.remove(id);
        Notice.next(redirect, "bringing.draft.removed");
        return "redirect:/sales/bring";
    }

    @PostMapping("/mappings/{id}/remove")
    String removeMapping(@PathVariable UUID id, RedirectAttributes redirect) {
        mappings.remove(id);
        Notice.next(redirect, "bringing.mapping.removed");
        return "redirect:/sales/bring";
    }

    private String page(Model model) {
        model.addAttribute("drafts", drafts.all());
        model.addAttribute("imports", imports.latest(SHOWN));
        model.addAttribute("mappings", mappings.all());
        model.addAttribute("noChannel", known.places().isEmpty());
        model.addAttribute("megabytes", Drafts.LARGEST / 1_000_000);
        model.addAttribute("mostRows", Sheet.MOST_ROWS);
        model.addAttribute("mostColumns", Sheet.MOST_COLUMNS);
        model.addAttribute("mostDrafts", Drafts.MOST);
        return "bringing/files";
    }
}
