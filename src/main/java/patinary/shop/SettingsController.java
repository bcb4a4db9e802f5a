package patinary.shop;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.web.Notice;

/** The page with the shop's settings; for its owner only. */
@Controller
@RequestMapping("/shop")
class SettingsController {

    private final Settings settings;
    private final CurrentShop shop;

    SettingsController(Settings settings, CurrentShop shop) {
        this.settings = settings;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("form", settings.read());
        return page(model);
    }

    @PostMapping
    String change(
            @ModelAttribute("form") SettingsForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors);
        answers.text("shopName", form.shopName, Answers.SHOP_NAME, "shop.error.shop-name");
        answers.oneOf("taxTable", form.taxTable, Offered.taxTables(), "shop.error.tax-table");
        answers.oneOf("costingMethod", form.costingMethod, Offered.costingMethods(), "shop.error.costing");
        answers.language(form.language, form.country);
        answers.oneOf("timeZone", form.timeZone, Offered.timeZones(), "shop.error.time-zone");
        if (!settings.mayBeSortedBy(form.taxTable)) {
            errors.rejectValue("taxTable", "shop.error.tax-table-sealed");
        }
        Amount rate = answers.hourlyRate(shop.currency(), form.hourlyRate);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model);
        }
        try {
            settings.change(form, rate);
        } catch (Refused refused) {
            errors.rejectValue("costingMethod", "shop.error.costing-refused");
            response.setStatus(422);
            return page(model);
        }
        Notice.next(redirect, "shop.settings.saved");
        return "redirect:/shop";
    }

    private String page(Model model) {
        model.addAttribute("currency", shop.currency().code());
        model.addAttribute("firstDay", shop.firstDay());
        model.addAttribute("taxTables", Offered.taxTables());
        model.addAttribute("costingMethods", Offered.costingMethods());
        model.addAttribute("timeZones", Offered.timeZones());
        model.addAttribute("languages", Offered.languages());
        model.addAttribute("countries", Offered.countries(shop.locale()));
        return "shop/settings";
    }
}
