package patinary.supplies;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.Optional;
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
import patinary.measure.Dimension;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Adds, changes and removes supplies. */
@Controller
@RequestMapping("/supplies")
class SupplyEditController {

    private final SupplyCatalog catalog;
    private final SupplyKeeping keeping;
    private final SupplyLines lines;
    private final CurrentShop shop;

    SupplyEditController(SupplyCatalog catalog, SupplyKeeping keeping, SupplyLines lines, CurrentShop shop) {
        this.catalog = catalog;
        this.keeping = keeping;
        this.lines = lines;
        this.shop = shop;
    }

    @GetMapping("/new")
    String fresh(@RequestParam(defaultValue = "") String line, Model model) {
        SupplyForm form = SupplyForm.fresh();
        form.line = line;
        model.addAttribute("form", form);
        return page(model, null);
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable UUID id, Model model) {
        model.addAttribute("form", SupplyFilling.of(find(id), shop.currency()));
        return page(model, id);
    }

    @PostMapping(
            path = {"/new", "/{id}/edit"},
            params = "more")
    String more(
            @PathVariable(required = false) @Nullable UUID id,
            @ModelAttribute("form") SupplyForm form,
            @RequestParam String more,
            Model model) {
        switch (more) {
            case "pack" -> form.packs.add(new SupplyForm.Line());
            case "motif" -> form.motifs.add(new SupplyForm.Line());
            default -> form.measures.add(new SupplyForm.Line());
        }
        return page(model, id);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") SupplyForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return save(UUID.randomUUID(), null, form, errors, model, response, redirect);
    }

    @PostMapping("/{id}/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") SupplyForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return save(id, find(id), form, errors, model, response, redirect);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        SupplyCatalog.Known supply = find(id);
        if (keeping.remove(id)) {
            Notice.next(redirect, "supplies.removed", supply.facts().name());
            return "redirect:/supplies";
        }
        Notice.next(redirect, "supplies.not-removed", supply.facts().name());
        return "redirect:/supplies/" + id;
    }

    private String save(
            UUID id,
            SupplyCatalog.@Nullable Known stored,
            SupplyForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        Optional<Supply.Facts> facts =
                new SupplyReading(form, answers).facts().map(new SheetReading(form, answers)::complete);
        facts.ifPresent(read -> check(id, stored, read, form, answers));
        if (answers.anyWrong() || facts.isEmpty()) {
            response.setStatus(422);
            return page(model, stored == null ? null : id);
        }
        keeping.save(id, facts.get(), newLine(form), form.version);
        Notice.next(redirect, "supplies.saved", facts.get().name());
        return "redirect:/supplies/" + id;
    }

    private void check(
            UUID id, SupplyCatalog.@Nullable Known stored, Supply.Facts facts, SupplyForm form, Answers answers) {
        if (!form.newLine.isBlank() && keeping.isLineNameTaken(form.newLine, null)) {
            answers.wrong("newLine", "supplies.error.line-taken");
        }
        if (form.newLine.isBlank()
                && !form.line.isBlank()
                && lines.findById(facts.lineId()).isEmpty()) {
            answers.wrong("line", "supplies.error.line-missing");
        }
        if (keeping.isNameTaken(facts.lineId(), facts.name(), id)) {
            answers.wrong("name", "supplies.error.name-taken");
        }
        if (stored != null && stored.facts().dimension() != facts.dimension() && keeping.isUsed(id)) {
            answers.wrong("dimension", "supplies.error.dimension-fixed");
        }
    }

    private static @Nullable SupplyLine newLine(SupplyForm form) {
        return form.newLine.isBlank() ? null : new SupplyLine(UUID.randomUUID(), form.newLine, form.newMaker);
    }

    private SupplyCatalog.Known find(UUID id) {
        return catalog.find(id).orElseThrow(() -> new NotFound("supply " + id));
    }

    private String page(Model model, @Nullable UUID id) {
        model.addAttribute("action", id == null ? "/supplies/new" : "/supplies/" + id + "/edit");
        model.addAttribute("back", id == null ? "/supplies" : "/supplies/" + id);
        model.addAttribute("fresh", id == null);
        model.addAttribute("lines", SupplyController.lineChoices(lines));
        model.addAttribute("wears", SupplyPage.wears());
        model.addAttribute(
                "dimensions",
                Arrays.stream(Dimension.values())
                        .map(one -> Choice.said(one.name(), "supplies.dimension." + one.name()))
                        .toList());
        return "supplies/edit";
    }
}
