package patinary.backup;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.exchange.ArchiveRefused;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
import patinary.web.Notice;

/** Brings a backup of any size into an empty shop, from the folder of backups: nothing has to come through the browser. */
@Controller
@RequestMapping("/shop/backups/restore")
class RestoreController {

    private final ShopArchive archive;
    private final Rehearsals rehearsals;
    private final BackupPlans plans;
    private final CurrentShop shop;

    RestoreController(ShopArchive archive, Rehearsals rehearsals, BackupPlans plans, CurrentShop shop) {
        this.archive = archive;
        this.rehearsals = rehearsals;
        this.plans = plans;
        this.shop = shop;
    }

    @GetMapping
    String ask(Model model) {
        model.addAttribute("form", new RestoreForm());
        return page(model);
    }

    @PostMapping
    String restore(
            @ModelAttribute("form") RestoreForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect)
            throws IOException {
        Optional<Path> file = rehearsals.named(form.file);
        if (file.isEmpty()) {
            errors.rejectValue("file", "backup.error.file");
        }
        if (errors.hasErrors() || !isIn(file.get(), model)) {
            response.setStatus(422);
            return page(model);
        }
        Notice.next(redirect, "exchange.archive.loaded", shop.name());
        return "redirect:/";
    }

    private boolean isIn(Path file, Model model) throws IOException {
        try {
            archive.load(file, Progress.SILENT);
            return true;
        } catch (ArchiveRefused refused) {
            model.addAttribute("refused", refused);
            return false;
        }
    }

    private String page(Model model) {
        BackupPlan plan = plans.read();
        List<Choice> files = new BackupFolder(plans.folder(plan))
                .files().stream()
                        .map(kept -> Choice.named(kept.name(), kept.name() + ", " + Words.size(kept.bytes())))
                        .toList();
        model.addAttribute("files", files);
        model.addAttribute("folder", plans.folder(plan).toString());
        model.addAttribute("empty", archive.isShopEmpty());
        return "backup/restore";
    }
}
