package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Notice;

/** A person's own page: the devices she is signed in with, and her password and her passkeys. */
@Controller
@RequestMapping("/me")
class MeController {

    private static final Logger LOG = LoggerFactory.getLogger(MeController.class);
    private static final String BACK = "redirect:/me";

    private final OwnSignIn own;
    private final Devices devices;
    private final PasswordAgain again;
    private final PasswordRules rules;
    private final Passkeys keys;
    private final CurrentShop shop;

    MeController(
            OwnSignIn own, Devices devices, PasswordAgain again, PasswordRules rules, Passkeys keys, CurrentShop shop) {
        this.own = own;
        this.devices = devices;
        this.again = again;
        this.rules = rules;
        this.keys = keys;
        this.shop = shop;
    }

    @GetMapping
    String show(HttpServletRequest request, Model model) {
        PasswordForm form = new PasswordForm();
        form.others = true;
        model.addAttribute("form", form);
        return page(request, model);
    }

    /** With the old password too, as ASVS 5.0 (6.2.3) asks, although she has just shown that it is her. */
    @PostMapping("/password")
    String change(
            @ModelAttribute("form") PasswordForm form,
            BindingResult errors,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model,
            RedirectAttributes redirect) {
        String name = request.getRemoteUser();
        rules.refuse(form.password, name, shop.name()).ifPresent(reason -> errors.rejectValue("password", reason));
        if (!errors.hasErrors() && !again.isRight(name, form.current, request.getRemoteAddr())) {
            errors.rejectValue("current", "people.error.proof");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(request, model);
        }
        own.change(name, form.password);
        if (form.others) {
            devices.endOthers(name, here(request));
        }
        LOG.info("A password was changed from {}", request.getRemoteAddr());
        Notice.next(redirect, form.others ? "people.me.changed-others" : "people.me.changed");
        return BACK;
    }

    @PostMapping("/devices/{mark:[0-9a-f]{64}}/end")
    String end(@PathVariable String mark, HttpServletRequest request, RedirectAttributes redirect) {
        devices.end(request.getRemoteUser(), mark);
        Notice.next(redirect, "people.me.ended");
        return BACK;
    }

    @PostMapping("/devices/end-others")
    String endOthers(HttpServletRequest request, RedirectAttributes redirect) {
        devices.endOthers(request.getRemoteUser(), here(request));
        Notice.next(redirect, "people.me.others-ended");
        return BACK;
    }

    private static String here(HttpServletRequest request) {
        return request.getSession().getId();
    }

    private String page(HttpServletRequest request, Model model) {
        model.addAttribute("person", request.getRemoteUser());
        model.addAttribute("devices", devices.of(request.getRemoteUser(), here(request)));
        model.addAttribute("passkeys", keys.of(request.getRemoteUser()));
        return "shop/me";
    }
}
