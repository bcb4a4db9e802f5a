package patinary.taxyear;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Notice;

/** Sealing a year and taking its seal off; for the owner only. */
@Controller
@RequestMapping("/year/{year:[0-9]{4}}/seal")
class SealController {

    private static final String OWNER = "OWNER";
    private static final int NOTE = 2000;

    private final Seals seals;
    private final Refusal refusal;
    private final CurrentShop shop;

    SealController(Seals seals, Refusal refusal, CurrentShop shop) {
        this.seals = seals;
        this.refusal = refusal;
        this.shop = shop;
    }

    @GetMapping
    String ask(@PathVariable int year, HttpServletRequest request, Model model) {
        owner(request);
        model.addAttribute("form", new SealForm());
        return page(year, model);
    }

    @PostMapping
    String seal(
            @PathVariable int year,
            @ModelAttribute("form") SealForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        owner(request);
        Answers answers = new Answers(errors, shop.currency());
        String note = answers.note("note", form.note, NOTE);
        if (!form.sure) {
            answers.wrong("sure", "taxyear.error.sure");
        }
        if (!YearBooks.last(year).isBefore(shop.today())) {
            answers.wrong("", "taxyear.error.not-over");
        }
        if (!answers.anyWrong() && sealed(year, note, errors)) {
            Notice.next(redirect, "taxyear.sealed", String.valueOf(year));
            return "redirect:/year/" + year;
        }
        response.setStatus(422);
        return page(year, model);
    }

    @PostMapping("/open")
    String open(@PathVariable int year, HttpServletRequest request, RedirectAttributes redirect) {
        owner(request);
        try {
            seals.open(year);
            Notice.next(redirect, "taxyear.opened", String.valueOf(year));
        } catch (Refused laterYearSealed) {
            Notice.next(redirect, "taxyear.error.later-sealed");
        }
        return "redirect:/year/" + year;
    }

    private boolean sealed(int year, String note, BindingResult errors) {
        try {
            seals.seal(year, note);
            return true;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return false;
        }
    }

    private String page(int year, Model model) {
        YearController.require(year);
        model.addAttribute("year", year);
        model.addAttribute("seal", seals.of(year).orElse(null));
        return "taxyear/seal";
    }

    private static void owner(HttpServletRequest request) {
        if (!request.isUserInRole(OWNER)) {
            throw new AccessDeniedException("Only the owner seals a year");
        }
    }
}
