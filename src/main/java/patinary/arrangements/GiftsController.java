package patinary.arrangements;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.shop.CurrentShop;
import patinary.web.Notice;

/** Supplies that came free. */
@Controller
@RequestMapping("/arrangements/received")
class GiftsController {

    private final Gifts gifts;
    private final CurrentShop shop;

    GiftsController(Gifts gifts, CurrentShop shop) {
        this.gifts = gifts;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("gifts", gifts.all());
        return "arrangements/received";
    }

    @GetMapping("/new")
    String blank(Model model) {
        GiftForm form = new GiftForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        return page(model, form);
    }

    @PostMapping("/new")
    String take(
            @ModelAttribute("form") GiftForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (gifts.take(form, errors)) {
            Notice.next(redirect, "arrangements.gift.taken");
            return "redirect:/arrangements/received";
        }
        response.setStatus(422);
        return page(model, form);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        try {
            gifts.remove(id);
            Notice.next(redirect, "arrangements.gift.removed");
        } catch (Refused sealed) {
            Notice.next(redirect, "arrangements.sealed");
        }
        return "redirect:/arrangements/received";
    }

    private String page(Model model, GiftForm form) {
        model.addAttribute("form", form);
        model.addAttribute("supplies", gifts.supplies());
        return "arrangements/received-form";
    }
}
