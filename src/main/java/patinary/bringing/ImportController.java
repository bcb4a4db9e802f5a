package patinary.bringing;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.selling.ManySales;
import patinary.web.NotFound;
import patinary.web.Notice;

/** What a file brought in, and the button that takes it back. */
@Controller
@RequestMapping("/sales/bring/imports/{id}")
class ImportController {

    private final Imports imports;
    private final Bringing bringing;

    ImportController(Imports imports, Bringing bringing) {
        this.imports = imports;
        this.bringing = bringing;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        return page(id, List.of(), model);
    }

    @PostMapping("/undo")
    String undo(@PathVariable UUID id, Model model, HttpServletResponse response, RedirectAttributes redirect) {
        List<ManySales.Fault> faults = bringing.undo(id);
        if (!faults.isEmpty()) {
            response.setStatus(422);
            return page(id, faults, model);
        }
        Notice.next(redirect, "bringing.undone");
        return "redirect:/sales/bring/imports/" + id;
    }

    private String page(UUID id, List<ManySales.Fault> faults, Model model) {
        model.addAttribute("row", imports.find(id).orElseThrow(() -> new NotFound("Import " + id)));
        model.addAttribute("sales", imports.sales(id));
        model.addAttribute("faults", faults);
        return "bringing/import";
    }
}
