package patinary.supplies;

import jakarta.servlet.http.HttpServletResponse;
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
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Makes bundles of supplies, changes them, and takes them off sale. */
@Controller
@RequestMapping("/supplies/bundles")
class BundleController {

    private final BundleBook book;
    private final BundleRows rows;
    private final SupplyCatalog catalog;
    private final CurrentShop shop;

    BundleController(BundleBook book, BundleRows rows, SupplyCatalog catalog, CurrentShop shop) {
        this.book = book;
        this.rows = rows;
        this.catalog = catalog;
        this.shop = shop;
    }

    @GetMapping("/new")
    String fresh(Model model) {
        return page(model, BundleForm.empty(), null);
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable UUID id, Model model) {
        BundleBook.Kept kept = find(id);
        shares(model, kept.facts());
        return page(model, BundleForm.of(kept, shop.currency()), id);
    }

    /** Any button but the main one: adds or drops a part, or shows how the price is shared; nothing is stored. */
    @PostMapping(
            path = {"/new", "/{id}/edit"},
            params = "act")
    String rearrange(
            @PathVariable(required = false) @Nullable UUID id,
            @ModelAttribute("form") BundleForm form,
            BindingResult errors,
            @RequestParam String act,
            Model model,
            HttpServletResponse response) {
        if (act.equals("part")) {
            form.parts.add(new BundleForm.Line());
        } else if (act.equals("shares")) {
            Bundle.Facts facts = read(form, errors);
            if (errors.hasErrors()) {
                response.setStatus(422);
            } else {
                shares(model, facts);
            }
        } else {
            drop(form, act);
        }
        return page(model, form, id);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") BundleForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return save(null, form, errors, model, response, redirect);
    }

    @PostMapping("/{id}/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") BundleForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        find(id);
        return save(id, form, errors, model, response, redirect);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        String name = find(id).facts().name();
        book.remove(id);
        Notice.next(redirect, "supplies.bundle.removed", name);
        return "redirect:/supplies/shelf";
    }

    private String save(
            @Nullable UUID id,
            BundleForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        Bundle.Facts facts = read(form, errors);
        UUID own = id == null ? answers.id("id", form.id, "supplies.error.form-id") : id;
        if (book.isNameTaken(facts.name(), own)) {
            answers.wrong("name", "supplies.bundle.error.name-taken");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form, id);
        }
        if (id == null) {
            book.add(own, facts);
        } else {
            book.change(id, form.version, facts);
        }
        Notice.next(redirect, "supplies.bundle.saved", facts.name());
        return "redirect:/supplies/shelf";
    }

    private Bundle.Facts read(BundleForm form, BindingResult errors) {
        return new BundleReading(form, new Answers(errors, shop.currency()), catalog.toBuy()).facts();
    }

    private static void drop(BundleForm form, String act) {
        for (int i = form.parts.size() - 1; i >= 0; i--) {
            if (act.equals("drop-" + i)) {
                form.parts.remove(i);
            }
        }
    }

    private void shares(Model model, Bundle.Facts facts) {
        model.addAttribute("shares", rows.shares(facts));
        model.addAttribute(
                "basis", BundleShares.basis(book.known(facts.parts())).name());
    }

    private BundleBook.Kept find(UUID id) {
        return book.find(id).filter(kept -> !kept.removed()).orElseThrow(() -> new NotFound("bundle " + id));
    }

    private String page(Model model, BundleForm form, @Nullable UUID id) {
        model.addAttribute("form", form);
        model.addAttribute("fresh", id == null);
        model.addAttribute("action", id == null ? "/supplies/bundles/new" : "/supplies/bundles/" + id + "/edit");
        model.addAttribute("remove", "/supplies/bundles/" + id + "/remove");
        model.addAttribute("supplies", catalog.choicesToBuy());
        if (!model.containsAttribute("shares")) {
            model.addAttribute("shares", List.of());
        }
        return "supplies/bundle";
    }
}
