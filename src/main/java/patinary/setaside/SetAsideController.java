package patinary.setaside;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Optional;
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
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.taxbasis.BasisBook;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The estimate of what to set aside, her percentages, and what she noted as paid. */
@Controller
@RequestMapping("/year/{year:[0-9]{4}}/set-aside")
class SetAsideController {

    private static final int FIRST_YEAR = 1900;
    private static final int NOTE = 500;

    private final SetAside estimates;
    private final SetAsideBook book;
    private final BasisBook basis;
    private final CurrentShop shop;

    SetAsideController(SetAside estimates, SetAsideBook book, BasisBook basis, CurrentShop shop) {
        this.estimates = estimates;
        this.book = book;
        this.basis = basis;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable int year, Model model) {
        if (year < FIRST_YEAR) {
            throw new NotFound("year " + year);
        }
        model.addAttribute("year", year);
        model.addAttribute("today", shop.today());
        model.addAttribute("estimates", estimates.year(year));
        model.addAttribute("sources", estimates.sources(year));
        model.addAttribute("otherwise", basis.year(year).profit());
        model.addAttribute("own", book.own(year).orElse(null));
        model.addAttribute("paid", book.paid(year));
        return "setaside/set-aside";
    }

    /** Where nothing is said of a year yet, what was said of the year before is offered. */
    @GetMapping("/percent")
    String percent(@PathVariable int year, Model model) {
        PercentForm form = new PercentForm();
        Optional<SetAsideBook.Own> own = book.own(year);
        form.version = own.map(SetAsideBook.Own::version).orElse(-1L);
        own.or(() -> book.own(year - 1)).ifPresent(said -> {
            form.income = plain(said.incomePercent());
            form.state = plain(said.statePercent());
        });
        return percentPage(year, form, model);
    }

    @PostMapping("/percent")
    String keep(
            @PathVariable int year,
            @ModelAttribute("form") PercentForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        Percent income = answers.percent("income", form.income).orElse(Percent.ZERO);
        Percent state = answers.percent("state", form.state).orElse(Percent.ZERO);
        if (answers.anyWrong()) {
            response.setStatus(422);
            return percentPage(year, form, model);
        }
        book.keep(new SetAsideBook.Own(year, income, state, form.version));
        Notice.next(redirect, "setaside.percent.saved");
        return home(year);
    }

    @GetMapping("/paid")
    String blank(@PathVariable int year, Model model) {
        PaidForm form = new PaidForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        return paidPage(year, form, model);
    }

    @PostMapping("/paid")
    String note(
            @PathVariable int year,
            @ModelAttribute("form") PaidForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate day = answers.date("date", form.date);
        Amount amount = answers.amount("amount", form.amount);
        if (amount.isZero() && !errors.hasFieldErrors("amount")) {
            answers.wrong("amount", "setaside.error.zero");
        }
        String note = answers.note("note", form.note, NOTE);
        if (answers.anyWrong()) {
            response.setStatus(422);
            return paidPage(year, form, model);
        }
        UUID id = Ids.read(form.id).orElseGet(UUID::randomUUID);
        book.note(new TaxPayment(id, year, day, amount.minor(), note));
        Notice.next(redirect, "setaside.paid.saved");
        return home(year);
    }

    @PostMapping("/paid" + Ids.PATH + "/remove")
    String remove(@PathVariable int year, @PathVariable UUID id, RedirectAttributes redirect) {
        book.remove(year, id);
        Notice.next(redirect, "setaside.paid.removed");
        return home(year);
    }

    private static String home(int year) {
        return "redirect:/year/" + year + "/set-aside";
    }

    private static String percentPage(int year, PercentForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("year", year);
        return "setaside/percent";
    }

    private static String paidPage(int year, PaidForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("year", year);
        return "setaside/paid";
    }

    private static String plain(Percent percent) {
        return percent.value().stripTrailingZeros().toPlainString();
    }
}
