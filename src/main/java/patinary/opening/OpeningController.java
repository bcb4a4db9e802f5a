package patinary.opening;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.shop.CurrentShop;
import patinary.web.Notice;

/** Starting in mid-life: what was there on the first day. */
@Controller
@RequestMapping("/opening")
class OpeningController {

    private final OpeningDesk desk;
    private final OpeningFill fill;
    private final OpeningReading reading;
    private final OpeningChoices choices;
    private final Refusal refusal;
    private final CurrentShop shop;

    OpeningController(
            OpeningDesk desk,
            OpeningFill fill,
            OpeningReading reading,
            OpeningChoices choices,
            Refusal refusal,
            CurrentShop shop) {
        this.desk = desk;
        this.fill = fill;
        this.reading = reading;
        this.choices = choices;
        this.refusal = refusal;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("form", desk.read().map(fill::of).orElseGet(fill::empty));
        return page(model);
    }

    /** The small buttons draw the form again and store nothing. */
    @PostMapping
    String save(
            @ModelAttribute("form") OpeningForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (OpeningEdits.carryOut(form, action)) {
            return page(model);
        }
        OpeningEdits.tidy(form);
        OpeningDraft draft = reading.read(form, desk.read().map(OpeningDesk.Stored::content), errors);
        if (!errors.hasErrors()) {
            store(draft, form, errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model);
        }
        Notice.next(redirect, "opening.saved");
        return "redirect:/opening";
    }

    private void store(OpeningDraft draft, OpeningForm form, BindingResult errors) {
        try {
            desk.save(draft, form.version);
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        } catch (OpeningDesk.StillNamed named) {
            errors.reject("opening.error.still-named");
        }
    }

    private String page(Model model) {
        Optional<OpeningStock> stock = desk.read().map(stored -> OpeningStock.of(stored.content()));
        model.addAttribute("stock", stock.orElse(null));
        model.addAttribute("firstDay", shop.firstDay());
        model.addAttribute("places", choices.moneyPlaces());
        model.addAttribute("pieceNames", choices.pieces());
        model.addAttribute("supplyChoices", choices.supplies());
        model.addAttribute("stockPlaces", choices.stockPlaces());
        model.addAttribute("sources", choices.sources());
        model.addAttribute("owedChoices", choices.owed());
        return "opening/opening";
    }
}
