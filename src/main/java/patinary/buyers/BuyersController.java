package patinary.buyers;

import jakarta.servlet.http.HttpServletRequest;
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
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** Buyers by name; erases one after asking. A name never stands in an address: a document of its stands for it. */
@Controller
@RequestMapping("/buyers")
class BuyersController {

    private final Buyers buyers;
    private final Erasing erasing;
    private final Drafts drafts;

    BuyersController(Buyers buyers, Erasing erasing, Drafts drafts) {
        this.buyers = buyers;
        this.erasing = erasing;
        this.drafts = drafts;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        model.addAttribute("rows", buyers.page(q, Window.of(page)));
        model.addAttribute("query", q);
        return "buyers/list";
    }

    @GetMapping(Ids.PATH)
    String ask(@PathVariable UUID id, Model model) {
        return page(require(id), new EraseForm(), model);
    }

    @PostMapping(Ids.PATH)
    String erase(
            @PathVariable UUID id,
            @ModelAttribute("form") EraseForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Erasing.onlyOwner(request.isUserInRole(Erasing.OWNER));
        Buyer buyer = require(id);
        if (!form.sure) {
            errors.rejectValue("sure", "buyers.error.sure");
            response.setStatus(422);
            return page(buyer, form, model);
        }
        erasing.erase(List.of(buyer.name()), new Erasing.Also(form.notes, form.orders));
        Notice.next(redirect, "buyers.done", "1");
        return "redirect:/buyers";
    }

    private Buyer require(UUID document) {
        return buyers.of(document)
                .filter(buyer -> !buyer.isErased())
                .orElseThrow(() -> new NotFound("Buyer of " + document));
    }

    private String page(Buyer buyer, EraseForm form, Model model) {
        model.addAttribute("buyer", buyer);
        model.addAttribute("form", form);
        model.addAttribute("files", drafts.naming(new NameInText(buyer.name())).size());
        return "buyers/erase";
    }
}
