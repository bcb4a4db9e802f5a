package patinary.taxyear;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.OptimisticLockingFailureException;
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
import patinary.taxbasis.TaxYears;
import patinary.web.Answers;
import patinary.web.Notice;

/** What is open in a year, sealing it, and taking its seal off; for the owner only, who has just shown that it is her. */
@Controller
@RequestMapping("/year/{year:[0-9]{4}}/seal")
class SealController {

    private static final String OWNER = "OWNER";
    private static final int NOTE = 2000;

    private final Seals seals;
    private final Closing closing;
    private final Refusal refusal;
    private final CurrentShop shop;
    private final TaxYears taxYears;

    SealController(Seals seals, Closing closing, Refusal refusal, CurrentShop shop, TaxYears taxYears) {
        this.seals = seals;
        this.closing = closing;
        this.refusal = refusal;
        this.shop = shop;
        this.taxYears = taxYears;
    }

    @GetMapping
    String ask(@PathVariable int year, HttpServletRequest request, Model model) {
        owner(request);
        YearController.require(year);
        Optional<Seals.Seal> seal = seals.of(year);
        model.addAttribute("form", seal.isPresent() ? new TakeOffForm() : new SealForm());
        return page(year, closing.items(year), seal, model);
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
        YearController.require(year);
        mustBeSealed(year, false);
        List<OpenItem> open = closing.items(year);
        Answers answers = new Answers(errors, shop.currency());
        String note = answers.note("note", form.note, NOTE);
        if (!form.sure) {
            answers.wrong("sure", "taxyear.error.sure");
        }
        if (!open.isEmpty() && !form.nonetheless) {
            answers.wrong("nonetheless", "closing.error.open");
        }
        if (!ended(year)) {
            answers.wrong("", "taxyear.error.not-over");
        }
        if (!answers.anyWrong() && sealed(year, note, errors)) {
            Notice.next(redirect, "taxyear.sealed", String.valueOf(year));
            return "redirect:/year/" + year;
        }
        response.setStatus(422);
        return page(year, open, Optional.empty(), model);
    }

    /** Takes the seal off, with a reason that stays. */
    @PostMapping("/open")
    String open(
            @PathVariable int year,
            @ModelAttribute("form") TakeOffForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        owner(request);
        YearController.require(year);
        mustBeSealed(year, true);
        Answers answers = new Answers(errors, shop.currency());
        String reason = answers.text("reason", form.reason, NOTE, "closing.error.reason");
        if (!answers.anyWrong() && takenOff(year, request.getRemoteUser(), reason, errors)) {
            Notice.next(redirect, "taxyear.opened", String.valueOf(year));
            return "redirect:/year/" + year;
        }
        response.setStatus(422);
        return page(year, closing.items(year), seals.of(year), model);
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

    private boolean takenOff(int year, String who, String reason, BindingResult errors) {
        try {
            seals.takeOff(year, who, reason);
            return true;
        } catch (Refused laterYearSealed) {
            errors.reject("taxyear.error.later-sealed");
            return false;
        }
    }

    /** The page shows one of the two forms; the other one comes from a page that was drawn before. */
    private void mustBeSealed(int year, boolean expected) {
        if (seals.of(year).isPresent() != expected) {
            throw new OptimisticLockingFailureException("The year " + year + " was sealed or opened meanwhile");
        }
    }

    private boolean ended(int year) {
        return taxYears.last(year).isBefore(shop.today());
    }

    private String page(int year, List<OpenItem> open, Optional<Seals.Seal> seal, Model model) {
        model.addAttribute("year", year);
        model.addAttribute("last", taxYears.last(year));
        model.addAttribute("ended", ended(year));
        model.addAttribute("items", ClosingItem.values());
        model.addAttribute("open", open);
        model.addAttribute("seal", seal.orElse(null));
        model.addAttribute("takenOff", seals.takenOff(year));
        return "taxyear/seal";
    }

    private static void owner(HttpServletRequest request) {
        if (!request.isUserInRole(OWNER)) {
            throw new AccessDeniedException("Only the owner seals a year");
        }
    }
}
