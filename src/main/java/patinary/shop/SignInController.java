package patinary.shop;

import jakarta.servlet.http.HttpSession;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.SessionAttribute;

/** The sign-in page. A refusal says one thing whatever the reason was. */
@Controller
class SignInController {

    @ModelAttribute("form")
    SignInForm form() {
        return new SignInForm();
    }

    @GetMapping("/sign-in")
    String show(
            @ModelAttribute(name = "form", binding = false) SignInForm form,
            BindingResult errors,
            @RequestParam(required = false) @Nullable String failed,
            @SessionAttribute(name = AfterRefusal.NAME, required = false) @Nullable String name,
            HttpSession session) {
        if (failed != null) {
            errors.reject("shop.sign-in.failed");
            form.name = name == null ? "" : name;
        }
        session.removeAttribute(AfterRefusal.NAME);
        return "shop/sign-in";
    }
}
