package patinary.asking;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Ids;

/** What to ask for a piece or a set, on each of her channels. */
@Controller
class AskingController {

    private static final String OWNER = "OWNER";

    private final AskingDesk desk;
    private final CurrentShop shop;

    AskingController(AskingDesk desk, CurrentShop shop) {
        this.desk = desk;
        this.shop = shop;
    }

    @GetMapping("/asking")
    String page(
            @ModelAttribute("form") AskingForm form, BindingResult errors, HttpServletRequest request, Model model) {
        model.addAttribute("view", desk.view(form, errors).orElse(null));
        model.addAttribute("rate", shop.hourlyRate());
        model.addAttribute("plain", new Plain());
        model.addAttribute("standing", Ids.read(form.offer).isPresent());
        // Only the owner gets to what she aims at; a reader is not sent to a closed door.
        model.addAttribute("mayAim", request.isUserInRole(OWNER));
        return "asking/asking";
    }

    /** A price as the form of an offer takes it. */
    final class Plain {
        private Plain() {}

        public String of(Amount price) {
            return shop.currency().plain(price);
        }
    }
}
