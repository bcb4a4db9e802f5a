package patinary.labels;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The sheets and rolls there are, her own ones, their test pages, and the address on labels. */
@Controller
@RequestMapping("/labels/grids")
class GridController {

    private final LabelGrids grids;
    private final GridReading reading;
    private final GridNames names;
    private final LabelAddress address;

    GridController(LabelGrids grids, GridReading reading, GridNames names, LabelAddress address) {
        this.grids = grids;
        this.reading = reading;
        this.names = names;
        this.address = address;
    }

    @GetMapping
    String list(Model model, HttpServletRequest request) {
        AddressForm form = new AddressForm();
        form.address = address.now(request);
        model.addAttribute("form", form);
        return listPage(model, request);
    }

    @PostMapping("/address")
    String address(
            @ModelAttribute("form") AddressForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (!address.keep(form.address)) {
            errors.rejectValue("address", "labels.error.address");
            response.setStatus(422);
            return listPage(model, request);
        }
        Notice.next(redirect, "labels.address.saved");
        return "redirect:/labels/grids";
    }

    @GetMapping("/{key}/test.pdf")
    ResponseEntity<byte[]> test(@PathVariable String key) {
        LabelGrid grid = grids.find(key)
                .orElseThrow(() -> new NotFound("label grid " + key))
                .grid();
        return Pdf.answer("test-page.pdf", LabelFile.test(grid, names.testWords(grid)));
    }

    @GetMapping("/new")
    String fresh(Model model, Locale locale) {
        GridForm form = new GridForm();
        form.paper = Paper.of(locale).name();
        model.addAttribute("form", form);
        return form(UUID.randomUUID(), false, model);
    }

    @GetMapping(Ids.PATH)
    String edit(@PathVariable UUID id, Model model) {
        GridForm form = GridForm.of(own(id));
        form.version = grids.version(id).orElse(0L);
        model.addAttribute("form", form);
        return form(id, true, model);
    }

    @PostMapping(Ids.PATH)
    String keep(
            @PathVariable UUID id,
            @ModelAttribute("form") GridForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Optional<LabelGrid> grid = reading.read(form, id, errors);
        if (grid.isEmpty()) {
            response.setStatus(422);
            return form(id, grids.find(id.toString()).isPresent(), model);
        }
        grids.keep(id, form.name, grid.get(), form.version);
        Notice.next(redirect, "labels.grid.saved", form.name);
        return "redirect:/labels/grids";
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        Notice.next(redirect, "labels.grid.removed", own(id).name());
        grids.remove(id);
        return "redirect:/labels/grids";
    }

    private KnownGrid own(UUID id) {
        return grids.find(id.toString()).orElseThrow(() -> new NotFound("label grid " + id));
    }

    private String listPage(Model model, HttpServletRequest request) {
        model.addAttribute("own", names.choices(grids.own()));
        model.addAttribute("builtIn", names.choices(grids.builtIn()));
        model.addAttribute("here", LabelAddress.of(request));
        return "labels/grids";
    }

    private static String form(UUID id, boolean stored, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("stored", stored);
        model.addAttribute(
                "papers",
                java.util.stream.Stream.of(Paper.values())
                        .map(paper -> Choice.said(paper.name(), "labels.paper." + paper.name()))
                        .toList());
        return "labels/grid";
    }
}
