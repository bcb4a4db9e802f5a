package patinary.taxbasis;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
import patinary.shop.CurrentShop;
import patinary.taxbasis.TaxBasis.Income;
import patinary.taxbasis.TaxBasis.Supplies;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** How a year is counted: what that does, trying another way, and setting it. Only the owner sets it. */
@Controller
@RequestMapping("/year/{year:[0-9]{4}}/basis")
class BasisController {

    private static final int NOTE = 2000;
    private static final int FIRST_YEAR = 1900;
    private static final List<Choice> INCOMES = Arrays.stream(Income.values())
            .map(income -> Choice.said(income.name(), "taxbasis.income." + income))
            .toList();
    private static final List<Choice> SUPPLIES = Arrays.stream(Supplies.values())
            .map(supplies -> Choice.said(supplies.name(), "taxbasis.supplies." + supplies))
            .toList();

    private final BasisBook book;
    private final TaxYears years;
    private final CurrentShop shop;

    BasisController(BasisBook book, TaxYears years, CurrentShop shop) {
        this.book = book;
        this.years = years;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable int year, Model model) {
        BasisForm form = new BasisForm();
        TaxBasis now = book.basis(year);
        form.income = now.income().name();
        form.supplies = now.supplies().name();
        form.note = book.set(year).map(TaxBases.Kept::note).orElse("");
        model.addAttribute("form", form);
        return page(year, model);
    }

    /** What another way would do; nothing is kept. */
    @GetMapping("/try")
    String tried(
            @PathVariable int year,
            @ModelAttribute("form") BasisForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Optional<TaxBasis> wanted = read(form, errors);
        if (wanted.isEmpty()) {
            response.setStatus(422);
            return page(year, model);
        }
        return trial(year, wanted.get(), model);
    }

    @PostMapping
    String set(
            @PathVariable int year,
            @ModelAttribute("form") BasisForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        owner(request);
        Optional<TaxBasis> wanted = read(form, errors);
        Answers answers = new Answers(errors, shop.currency());
        String note = answers.note("note", form.note, NOTE);
        if (!form.sure) {
            answers.wrong("sure", "taxbasis.error.sure");
        }
        if (wanted.isPresent() && !answers.anyWrong()) {
            if (book.set(year, wanted.get(), note)) {
                Notice.next(redirect, "taxbasis.set", String.valueOf(year));
                return "redirect:/year/" + year + "/basis";
            }
            answers.wrong("", "taxbasis.error.sealed");
        }
        response.setStatus(422);
        return wanted.isPresent() ? trial(year, wanted.get(), model) : page(year, model);
    }

    @PostMapping("/back")
    String back(@PathVariable int year, HttpServletRequest request, RedirectAttributes redirect) {
        owner(request);
        boolean done = book.unset(year);
        Notice.next(redirect, done ? "taxbasis.unset" : "taxbasis.error.sealed", String.valueOf(year));
        return "redirect:/year/" + year + "/basis";
    }

    /** The rows behind one reason. */
    @GetMapping("/rows/{word}")
    String rows(@PathVariable int year, @PathVariable String word, Model model) {
        Reason reason = Arrays.stream(Reason.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new NotFound("reason " + word));
        require(year);
        List<Adjustment> rows = book.year(year).rows().stream()
                .filter(row -> row.reason() == reason)
                .toList();
        model.addAttribute("year", year);
        model.addAttribute("reason", reason);
        model.addAttribute("group", new Adjustments.Group(reason, rows));
        model.addAttribute("firstDay", years.first(year));
        model.addAttribute("lastDay", years.last(year));
        return "taxbasis/rows";
    }

    private static Optional<TaxBasis> read(BasisForm form, BindingResult errors) {
        Optional<Income> income = choice(Income.class, form.income);
        Optional<Supplies> supplies = choice(Supplies.class, form.supplies);
        if (income.isEmpty()) {
            errors.rejectValue("income", "taxbasis.error.income");
        }
        if (supplies.isEmpty()) {
            errors.rejectValue("supplies", "taxbasis.error.supplies");
        }
        return income.flatMap(one -> supplies.map(other -> new TaxBasis(one, other)));
    }

    private static <E extends Enum<E>> Optional<E> choice(Class<E> type, String answer) {
        return Arrays.stream(type.getEnumConstants())
                .filter(one -> one.name().equals(answer))
                .findFirst();
    }

    private String page(int year, Model model) {
        facts(year, model);
        return "taxbasis/basis";
    }

    private String trial(int year, TaxBasis wanted, Model model) {
        facts(year, model);
        model.addAttribute("wanted", wanted);
        model.addAttribute("tried", book.tried(year, wanted));
        return "taxbasis/basis";
    }

    private void facts(int year, Model model) {
        require(year);
        model.addAttribute("year", year);
        model.addAttribute("now", book.year(year));
        model.addAttribute("books", book.bookProfit(year));
        model.addAttribute("setHere", book.set(year).orElse(null));
        model.addAttribute("inherited", book.inherited(year));
        model.addAttribute("sealed", book.sealed(year));
        model.addAttribute("startsBooks", year == years.firstOfBooks());
        model.addAttribute("incomes", INCOMES);
        model.addAttribute("supplyChoices", SUPPLIES);
    }

    private static void require(int year) {
        if (year < FIRST_YEAR) {
            throw new NotFound("year " + year);
        }
    }

    private static void owner(HttpServletRequest request) {
        if (!request.isUserInRole("OWNER")) {
            throw new AccessDeniedException("Only the owner sets how a year is counted");
        }
    }
}
