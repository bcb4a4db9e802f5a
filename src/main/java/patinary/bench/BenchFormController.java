package patinary.bench;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.ArrayList;
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
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The form of a bench entry: new, and changed. */
@Controller
@RequestMapping("/bench")
class BenchFormController {

    private final BenchEntries entries;
    private final BenchFormPage page;
    private final WorkedPieces pieces;
    private final CurrentShop shop;
    private final Refusal refusal;
    private final BenchFinishes finishes;
    private final NowClock clock;
    private final KeptPots pots;

    BenchFormController(
            BenchEntries entries,
            BenchFormPage page,
            WorkedPieces pieces,
            CurrentShop shop,
            Refusal refusal,
            BenchFinishes finishes,
            NowClock clock,
            KeptPots pots) {
        this.pots = pots;
        this.entries = entries;
        this.page = page;
        this.pieces = pieces;
        this.shop = shop;
        this.refusal = refusal;
        this.finishes = finishes;
        this.clock = clock;
    }

    @GetMapping("/new")
    String fresh(
            @RequestParam(defaultValue = "") List<String> piece,
            @RequestParam(defaultValue = "") String supply,
            @RequestParam(defaultValue = "") String finish,
            @ModelAttribute("form") BenchForm form,
            Model model) {
        ChosenIds.read(piece).forEach(id -> form.pieces.add(id.toString()));
        BenchForm.UseLine line = new BenchForm.UseLine();
        List<SupplyCatalog.Known> supplies = page.supplies();
        if (BenchFormPage.tools(supplies).stream()
                .anyMatch(tool -> tool.toString().equals(supply))) {
            form.tools.add(supply);
        } else {
            line.supply = supply;
        }
        form.uses.add(line);
        form.finish = finish;
        List<WorkedPiece> chosen = page.chosen(form);
        if (finish.isEmpty()) {
            page.plan(form, chosen);
        } else {
            page.fillIn(form, supplies, chosen);
        }
        return show(model, form, null, supplies, chosen);
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable UUID id, Model model) {
        BenchEntries.Stored entry = entries.find(id).orElseThrow(() -> new NotFound("bench entry " + id));
        List<UUID> worked =
                entry.content().pieces().stream().map(BenchPiece::pieceId).toList();
        List<SupplyCatalog.Known> supplies = page.supplies();
        List<WorkedPiece> chosen = pieces.withIds(worked);
        BenchForm form = BenchFilling.of(id, entry.version(), entry.content(), chosen, BenchFormPage.tools(supplies));
        return show(model, form, id, supplies, chosen);
    }

    /** Any button but the main one: looks for pieces, adds or drops a line; nothing is stored. */
    @PostMapping(
            path = {"/new", "/{id}/edit"},
            params = "act")
    String rearrange(
            @PathVariable(required = false) @Nullable UUID id,
            @ModelAttribute("form") BenchForm form,
            @RequestParam String act,
            Principal who,
            Model model) {
        if (form.handling.act(act)) {
            return show(model, form, id);
        }
        switch (act) {
            case "use" -> form.uses.add(new BenchForm.UseLine());
            case "mishap" -> form.mishaps.add(new BenchForm.MishapLine());
            case "finish" -> page.fillIn(form, page.supplies(), page.chosen(form));
            default -> {
                waitAfter(form, act, who);
                form.uses = without(form.uses, act, "drop-use-");
                form.mishaps = without(form.mishaps, act, "drop-mishap-");
            }
        }
        return show(model, form, id);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") BenchForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "") String enter,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (form.looksForPieces(enter)) {
            return show(model, form, null);
        }
        Answers answers = new Answers(errors, shop.currency());
        BenchContent content = page.read(form, answers);
        UUID id = answers.id("id", form.id, "bench.error.form-id");
        if (answers.anyWrong()) {
            return again(model, form, null, response);
        }
        try {
            boolean isNew = entries.record(id, content);
            Notice.next(redirect, isNew ? "bench.saved" : "bench.known");
            return "redirect:/bench/" + id;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return again(model, form, null, response);
        }
    }

    @PostMapping("/{id}/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") BenchForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "") String enter,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (form.looksForPieces(enter)) {
            return show(model, form, id);
        }
        Answers answers = new Answers(errors, shop.currency());
        BenchContent content = page.read(form, answers);
        if (answers.anyWrong()) {
            return again(model, form, id, response);
        }
        List<String> missed = pots.used(id, content.handling().pots());
        if (!missed.isEmpty()) {
            answers.wrong("", "bench.error.pot-used", String.join(", ", missed));
            return again(model, form, id, response);
        }
        try {
            entries.change(id, form.version, content);
            Notice.next(redirect, "bench.changed");
            return "redirect:/bench/" + id;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return again(model, form, id, response);
        }
    }

    private void waitAfter(BenchForm form, String act, Principal who) {
        if (act.startsWith(NowActs.STEP_WAIT)) {
            finishes.step(form.finish, act.substring(NowActs.STEP_WAIT.length()))
                    .ifPresent(step -> clock.waitAfter(who.getName(), step));
        }
    }

    private String again(Model model, BenchForm form, @Nullable UUID id, HttpServletResponse response) {
        response.setStatus(422);
        return show(model, form, id);
    }

    private String show(Model model, BenchForm form, @Nullable UUID id) {
        return show(model, form, id, page.supplies(), page.chosen(form));
    }

    private String show(
            Model model,
            BenchForm form,
            @Nullable UUID id,
            List<SupplyCatalog.Known> supplies,
            List<WorkedPiece> chosen) {
        model.addAttribute("action", id == null ? "/bench/new" : "/bench/" + id + "/edit");
        model.addAttribute("back", id == null ? "/bench" : "/bench/" + id);
        model.addAttribute("fresh", id == null);
        page.fill(model, form, supplies, page.finishes(form), chosen);
        return "bench/edit";
    }

    private static <T> List<T> without(List<T> lines, String act, String prefix) {
        List<T> left = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!act.equals(prefix + i)) {
                left.add(lines.get(i));
            }
        }
        return left;
    }
}
