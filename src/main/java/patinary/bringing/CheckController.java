package patinary.bringing;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Shows what a file would bring, and brings it in when told. */
@Controller
@RequestMapping("/sales/bring/{id}/check")
class CheckController {

    private static final int SHOWN = 200;

    private final Drafts drafts;
    private final Imports imports;
    private final Bringing bringing;

    CheckController(Drafts drafts, Imports imports, Bringing bringing) {
        this.drafts = drafts;
        this.imports = imports;
        this.bringing = bringing;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        Optional<Drafts.Draft> draft = drafts.find(id);
        if (draft.isEmpty() && imports.find(id).isPresent()) {
            return "redirect:/sales/bring/imports/" + id;
        }
        Drafts.Draft found = draft.orElseThrow(() -> new NotFound("Draft " + id));
        if (!found.mapping().isReady()) {
            return "redirect:/sales/bring/" + id;
        }
        Plan plan = bringing.tried(found);
        List<Fault> faults = plan.faults();
        model.addAttribute("draft", found);
        model.addAttribute("seal", plan.seal());
        model.addAttribute("fresh", plan.with(Plan.Standing.NEW).size());
        model.addAttribute("sales", PlannedRow.of(plan, SHOWN));
        model.addAttribute(
                "known",
                plan.with(Plan.Standing.KNOWN).stream()
                        .map(one -> one.order().reference())
                        .toList());
        model.addAttribute("out", plan.with(Plan.Standing.OUT).size());
        model.addAttribute("wrong", plan.with(Plan.Standing.WRONG).size());
        model.addAttribute("faults", faults.stream().limit(SHOWN).toList());
        model.addAttribute(
                "twice", plan.soldTwice().stream().map(SettleLink::of).toList());
        model.addAttribute("more", Math.max(0, faults.size() - SHOWN));
        return "bringing/check";
    }

    @PostMapping
    String bringIn(@PathVariable UUID id, @RequestParam(defaultValue = "") String seal, RedirectAttributes redirect) {
        if (bringing.bringIn(id, seal)) {
            Notice.next(redirect, "bringing.done");
            return "redirect:/sales/bring/imports/" + id;
        }
        if (drafts.find(id).isEmpty()) {
            throw new NotFound("Draft " + id);
        }
        Notice.next(redirect, "bringing.changed");
        return "redirect:/sales/bring/" + id + "/check";
    }
}
