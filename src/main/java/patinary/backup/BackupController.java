package patinary.backup;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.task.TaskExecutor;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.exchange.Progress;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Downloads;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Page;
import patinary.web.SavedFile;
import patinary.web.Window;

/** The owner's page about backups. */
@Controller
@RequestMapping("/shop/backups")
class BackupController {

    private static final String HERE = "redirect:/shop/backups";

    private final Backups backups;
    private final Rehearsals rehearsals;
    private final BackupPlans plans;
    private final BackupRuns runs;
    private final BackupState state;
    private final Downloads downloads;
    private final CurrentShop shop;
    private final TaskExecutor aside;
    private final Clock clock;

    BackupController(
            Backups backups,
            Rehearsals rehearsals,
            BackupPlans plans,
            BackupRuns runs,
            BackupState state,
            Downloads downloads,
            CurrentShop shop,
            @Qualifier("applicationTaskExecutor") TaskExecutor aside,
            Clock clock) {
        this.backups = backups;
        this.rehearsals = rehearsals;
        this.plans = plans;
        this.runs = runs;
        this.state = state;
        this.downloads = downloads;
        this.shop = shop;
        this.aside = aside;
        this.clock = clock;
    }

    @GetMapping
    String show(@RequestParam(required = false) @Nullable Integer page, Model model) {
        model.addAttribute("form", PlanForm.of(plans.read()));
        return page(page, model);
    }

    /** Begins one; a large shop takes longer than a browser waits. */
    @PostMapping("/now")
    String now(RedirectAttributes redirect) {
        if (backups.isRunning()) {
            Notice.next(redirect, "backup.busy");
        } else {
            aside.execute(() -> backups.make(Progress.SILENT));
            Notice.next(redirect, "backup.begun");
        }
        return HERE;
    }

    @PostMapping("/rehearse")
    String rehearse(@RequestParam String file, RedirectAttributes redirect) {
        Path backup = rehearsals.named(file).orElseThrow(() -> new NotFound("backup " + file));
        if (rehearsals.isRunning()) {
            Notice.next(redirect, "backup.rehearse.busy");
        } else {
            aside.execute(() -> rehearsals.run(backup));
            Notice.next(redirect, "backup.rehearse.begun");
        }
        return HERE;
    }

    @PostMapping("/plan")
    String plan(
            @ModelAttribute("form") PlanForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        var plan = new PlanAnswers(new Answers(errors, shop.currency())).read(form);
        if (plan.isEmpty()) {
            response.setStatus(422);
            return page(null, model);
        }
        plans.store(plan.get());
        Notice.next(redirect, "backup.plan.saved");
        return HERE;
    }

    /** Sends the whole shop to the device. */
    @GetMapping("/download")
    void take(HttpServletResponse response) throws IOException {
        downloads.alone(() -> {
            String name = BackupFolder.name(LocalDateTime.ofInstant(clock.instant(), shop.zone()));
            SavedFile.head(response, SavedFile.ZIP, name);
            backups.take(response.getOutputStream());
        });
    }

    private String page(@Nullable Integer number, Model model) {
        BackupPlan plan = plans.read();
        Window window = Window.of(number);
        model.addAttribute("plan", plan);
        model.addAttribute("folder", plans.folder(plan).toString());
        model.addAttribute("beside", plans.isBesideTheShop(plan));
        model.addAttribute("running", backups.isRunning());
        model.addAttribute("rehearsing", rehearsals.isRunning());
        model.addAttribute("good", runs.lastGood().orElse(null));
        model.addAttribute("trouble", state.trouble().orElse(null));
        model.addAttribute("rehearsal", runs.lastRehearsal().orElse(null));
        model.addAttribute("files", files(plan));
        model.addAttribute("runs", Page.of(window, runs.list(window), runs.count()));
        return "backup/backups";
    }

    private List<KeptFile> files(BackupPlan plan) {
        return new BackupFolder(plans.folder(plan))
                .files().stream()
                        .map(kept -> new KeptFile(kept.name(), kept.at(), Words.size(kept.bytes())))
                        .toList();
    }

    /** A file as the page shows it. */
    record KeptFile(String name, java.time.Instant at, String size) {}
}
